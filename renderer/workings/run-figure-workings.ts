import type { Language } from '#core/plan/language.ts';
import type { OptionStudy } from '#core/study/study.ts';
import type { Working } from '../controls/working.ts';
import type { LedgerPart } from '../places/run/ledger-parts.ts';
import { figureWorkingTexts } from '../text/figure-workings.ts';
import { runTexts } from '../text/run.ts';
import { workingTexts } from '../text/workings.ts';
import { figureWriter } from './figure-writer.ts';

/** Figures that are read off a run. */
export type RunFigure = 'left' | 'lowest' | 'peak' | 'rest';

/** The rest after a run: its length and the field it comes from. */
export interface OutingRest {
  readonly minutes: number;
  readonly field: string;
}

/** How a figure at the end of a run came about. */
export function runFigureWorking(
  figure: RunFigure,
  study: OptionStudy,
  index: number,
  rest: OutingRest,
  language: Language,
): Working {
  const text = figureWorkingTexts[language];
  const common = workingTexts[language];
  const write = figureWriter(language);
  const { run } = study;
  const capacity = {
    label: common.fullCharge,
    value: write.as(study.capacityAh, 'A·h'),
    field: `options.${index}.pack.block.capacityAh`,
  };
  const delivered = { label: text.delivered, value: write.as(run.deliveredAh, 'A·h') };
  const cable = { label: text.cable, value: '', field: 'machine.harnessResistanceOhm' };
  const named = (label: string, value: string) => ({ label, value });
  const time = named(common.runTime, write.minutes(run.runTimeMin));
  const shared = { source: text.ofRun, validity: common.runValidity };
  switch (figure) {
    case 'left':
      return {
        ...shared,
        formula: [text.left],
        inputs: [capacity, delivered],
        exact: { value: run.remainingPercent, unit: '%' },
        result: named(runTexts[language].left, write.as(run.remainingPercent, '%')),
      };
    case 'lowest':
      return {
        ...shared,
        formula: [text.lowest],
        inputs: [time, cable],
        exact: { value: run.minimumBusVoltageV, unit: 'V' },
        result: named(common.endVoltage, write.as(run.minimumBusVoltageV, 'V')),
      };
    case 'peak':
      return {
        ...shared,
        formula: [text.peak],
        inputs: [time, named(common.averageCurrent, write.as(run.averageCurrentA, 'A'))],
        exact: { value: run.peakCurrentA, unit: 'A' },
        result: named(runTexts[language].peak, write.as(run.peakCurrentA, 'A')),
      };
    case 'rest':
      return {
        ...shared,
        formula: [text.rest],
        inputs: [
          { label: text.restInput, value: write.minutes(rest.minutes), field: rest.field },
          named(common.remaining, write.as(run.remainingPercent, '%')),
        ],
        exact: { value: run.afterRestMin ?? 0, unit: 'min' },
        result: named(text.rest, write.minutes(run.afterRestMin ?? 0)),
      };
  }
}

/** Where a part of the energy went. */
export function ledgerWorking(part: LedgerPart, study: OptionStudy, language: Language): Working {
  const text = figureWorkingTexts[language];
  const common = workingTexts[language];
  const write = figureWriter(language);
  const { ledger } = study.run;
  return {
    formula: [text.ledger[part]],
    inputs: [{ label: common.givenUp, value: write.as(ledger.givenUpWh, 'W·h') }],
    steps: [
      {
        label: text.ledgerShare,
        value: write.fixed(
          ledger.givenUpWh > 0 ? (100 * ledger[part]) / ledger.givenUpWh : 0,
          '%',
          2,
        ),
      },
      { label: common.ledgerClosure, value: write.fixed(ledger.closurePercent, '%', 2) },
    ],
    exact: { value: ledger[part], unit: 'W·h' },
    result: { label: runTexts[language].ledger[part], value: write.as(ledger[part], 'W·h') },
    source: text.ofRun,
  };
}

/** What the step-down converter makes of what it takes. */
export function converterWorking(study: OptionStudy, language: Language): Working {
  const text = figureWorkingTexts[language];
  const write = figureWriter(language);
  const { ledger, converterEfficiencyPercent } = study.run;
  return {
    formula: [text.efficiency],
    inputs: [
      {
        label: text.intoConverter,
        value: write.as(ledger.accessoriesWh + ledger.converterLossWh, 'W·h'),
        field: 'machine.converter',
      },
      { label: text.outOfConverter, value: write.as(ledger.accessoriesWh, 'W·h') },
    ],
    exact: { value: converterEfficiencyPercent ?? 0, unit: '%' },
    result: {
      label: workingTexts[language].efficiency,
      value: write.as(converterEfficiencyPercent ?? 0, '%'),
    },
    source: text.ofRun,
  };
}

/** Days a parked machine takes to lose half its charge. */
export function standbyWorking(study: OptionStudy, index: number, language: Language): Working {
  const text = figureWorkingTexts[language];
  const write = figureWriter(language);
  return {
    formula: [text.standby],
    inputs: [
      {
        label: workingTexts[language].fullCharge,
        value: write.as(study.capacityAh, 'A·h'),
        field: `options.${index}.pack.block.capacityAh`,
      },
      { label: text.standbyInput, value: '', field: 'machine.accessories' },
    ],
    result: {
      label: runTexts[language].standby,
      value:
        study.standbyDaysToHalf === null
          ? runTexts[language].standbyNever
          : `${write.as(study.standbyDaysToHalf, '')} ${runTexts[language].days}`,
    },
    source: text.standbySource,
  };
}

/** Share of the plain promise Ah / A that the run delivers. */
export function promiseWorking(study: OptionStudy, plainMin: number, language: Language): Working {
  const text = figureWorkingTexts[language];
  const write = figureWriter(language);
  const share = (100 * study.run.runTimeMin) / plainMin;
  return {
    formula: [text.share],
    inputs: [
      { label: workingTexts[language].runTime, value: write.minutes(study.run.runTimeMin) },
      { label: text.plainTime, value: write.minutes(plainMin) },
    ],
    exact: { value: share, unit: '%' },
    result: { label: runTexts[language].missing, value: write.as(share, '%') },
    source: text.ofRun,
  };
}
