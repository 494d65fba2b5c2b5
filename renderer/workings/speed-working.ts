import type { Language } from '#core/plan/language.ts';
import type { OptionStudy } from '#core/study/study.ts';
import { displaySymbol, toDisplay, type UnitSystem } from '#core/units/display.ts';
import type { Working } from '../controls/working.ts';
import { figureWorkingTexts } from '../text/figure-workings.ts';
import { stripTexts } from '../text/strip.ts';
import { workingTexts } from '../text/workings.ts';
import { figureWriter } from './figure-writer.ts';

/** How the highest speed of a run came about; only for outings that are driven. */
export function speedWorking(study: OptionStudy, language: Language, units: UnitSystem): Working {
  const text = figureWorkingTexts[language];
  const write = figureWriter(language);
  const drive = study.run.drive;
  const speed = (kmh: number): string =>
    write.as(toDisplay(kmh, 'km/h', units), displaySymbol('km/h', units));
  return {
    formula: [text.speed],
    inputs: [
      { label: text.drive, value: '', field: 'machine.drive' },
      {
        label: workingTexts[language].averageCurrent,
        value: write.as(study.run.averageCurrentA, 'A'),
      },
    ],
    steps: [
      { label: text.averageSpeed, value: speed(drive?.averageSpeedKmh ?? 0) },
      { label: text.rollingSpeed, value: speed(drive?.rollingSpeedKmh ?? 0) },
    ],
    exact: { value: drive?.topSpeedKmh ?? 0, unit: 'km/h' },
    result: { label: stripTexts[language].speed, value: speed(drive?.topSpeedKmh ?? 0) },
    source: text.ofRun,
  };
}
