import { useMemo } from 'react';
import { surfaceById } from '#core/drive/surfaces.ts';
import { voltageView } from '#core/drive/voltage-view.ts';
import type { GearView, VoltageView } from '#core/drive/voltage-view.ts';
import { DataTable } from '../../../controls/DataTable.tsx';
import type { Row } from '../../../controls/DataTable.tsx';
import { FieldLink } from '../../../controls/FieldLink.tsx';
import { Section } from '../../../controls/Section.tsx';
import { SeriesMark } from '../../../controls/SeriesMark.tsx';
import { usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { useStudy } from '../../../state/study-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import type { DriveTexts } from '../../../text/drive.ts';
import { formatFigure, formatMinutes } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';

/** Speed, current, push and climb of every option and gear, side by side. */
export const VoltageSection = () => {
  const text = useText(driveTexts);
  const language = useSettings((state) => state.language);
  const machine = usePlan((plan) => plan.machine);
  const options = usePlan((plan) => plan.options);
  const { study } = useStudy();
  const views = useMemo(
    () => options.map((option) => voltageView(machine, option)),
    [machine, options],
  );
  const { drive } = machine;
  if (drive === null) return null;
  const figure = (value: number | null): string =>
    value === null ? '?' : formatFigure(value, language);
  const grade = drive.steepestGradePercent;
  const rows = views.flatMap((view, index) =>
    view.ok
      ? view.gears.map((gear): Row => {
          const minutes = study?.options.find(({ id }) => id === view.optionId)?.run.runTimeMin;
          return {
            id: `${view.optionId} ${gear.gearId}`,
            cells: {
              option: (
                <span className="option-cell">
                  <SeriesMark index={index} />
                  {view.optionName}, {gear.gearName}
                </span>
              ),
              motor: figure(gear.voltagePercent),
              top: figure(gear.topSpeedKmh),
              start: <StartCell gear={gear} text={text} value={figure(gear.startEachMotorA)} />,
              pack: figure(gear.startBatteryA),
              push: figure(gear.startForceN),
              climb: figure(gear.climbLimitPercent),
              up: figure(gear.gradeSpeedKmh),
              load: figure(gear.gradeRatedPercent),
              run: minutes === undefined ? '' : formatMinutes(minutes, language),
            },
          };
        })
      : [],
  );
  const open = views.flatMap((view, index) => openQuestions(view, index, text));
  return (
    <Section
      title={text.voltageTitle}
      lead={text.voltageLead(surfaceById(drive.steepestSurface).name[language])}
    >
      <DataTable
        caption={text.voltageTitle}
        hideCaption
        columns={[
          { id: 'option', label: text.option },
          { id: 'top', label: text.topSpeed, unit: 'km/h', isNumber: true },
          { id: 'motor', label: text.motorVoltage, unit: '%', isNumber: true },
          { id: 'start', label: text.startEach, unit: 'A', isNumber: true },
          { id: 'pack', label: text.startPack, unit: 'A', isNumber: true },
          { id: 'push', label: text.thrust, unit: 'N', isNumber: true },
          { id: 'climb', label: text.climbs, unit: '%', isNumber: true },
          {
            id: 'up',
            label: text.onGrade(grade === null ? '? %' : `${figure(grade)} %`),
            unit: 'km/h',
            isNumber: true,
          },
          { id: 'load', label: text.againstRating, unit: '%', isNumber: true },
          { id: 'run', label: text.runTime, isNumber: true },
        ]}
        rows={rows}
      />
      {open.length === 0 ? null : (
        <div className="drive-questions">
          <h3 className="drive-part-title">{text.questions}</h3>
          <ul>
            {open.map(({ path, words }) => (
              <li key={words}>
                <FieldLink field={path}>{words}</FieldLink>
              </li>
            ))}
          </ul>
        </div>
      )}
    </Section>
  );
};

const StartCell = ({
  gear,
  text,
  value,
}: {
  readonly gear: GearView;
  readonly text: DriveTexts;
  readonly value: string;
}) => {
  const { startSetBy: by } = gear;
  const known =
    by === 'duty' || by === 'motor-limit' || by === 'battery-limit' || by === 'slip' ? by : 'other';
  return (
    <span className="drive-start">
      {value}
      <span className="soft">{text.setBy[known]}</span>
    </span>
  );
};

/** Each question once, whichever option raises it first. */
function openQuestions(
  view: VoltageView,
  index: number,
  text: DriveTexts,
): { path: string; words: string }[] {
  if (!view.ok)
    return index === 0 ? [{ path: view.path, words: `${view.problem}. ${view.remedy}` }] : [];
  return view.questions
    .filter(({ about }) => index === 0 || about === 'pack-mass')
    .map(({ about, path }) => ({
      path: about === 'pack-mass' ? `options.${index}.${path}` : path,
      words: about === 'pack-mass' ? `${view.optionName}: ${text.ask[about]}` : text.ask[about],
    }));
}
