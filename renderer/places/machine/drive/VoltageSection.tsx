import { useMemo, type ReactNode } from 'react';
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
import { useStudy } from '../../../state/shown-study.ts';
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
  const columns = views.flatMap((view, index) =>
    view.ok
      ? view.gears.map((gear) => ({
          id: `${view.optionId} ${gear.gearId}`,
          head: (
            <span className="drive-head">
              <SeriesMark index={index} />
              {view.optionName}
              <span className="soft">{gear.gearName}</span>
            </span>
          ),
          gear,
          // A pack of unknown weight leaves what it pulls uphill open.
          weighed: !view.questions.some(({ about }) => about === 'pack-mass'),
          minutes: study?.options.find(({ id }) => id === view.optionId)?.run.runTimeMin ?? null,
        }))
      : [],
  );
  const onGrade = text.onGrade(grade === null ? '? %' : `${figure(grade)} %`);
  const lines: readonly (readonly [
    label: string,
    unit: string,
    read: (gear: GearView) => ReactNode,
    needsMass?: true,
  ])[] = [
    [text.topSpeed, 'km/h', (gear) => figure(gear.topSpeedKmh)],
    [text.motorVoltage, '%', (gear) => figure(gear.voltagePercent)],
    [
      text.startEach,
      'A',
      (gear) => <StartCell gear={gear} text={text} value={figure(gear.startEachMotorA)} />,
    ],
    [text.startPack, 'A', (gear) => figure(gear.startBatteryA)],
    [text.thrust, 'N', (gear) => figure(gear.startForceN)],
    [text.climbs, '%', (gear) => figure(gear.climbLimitPercent), true],
    [onGrade, 'km/h', (gear) => figure(gear.gradeSpeedKmh), true],
    [text.againstRating, '%', (gear) => figure(gear.gradeRatedPercent), true],
  ];
  const rows: Row[] = lines.map(([label, unit, read, needsMass]) => ({
    id: label,
    cells: {
      figure: (
        <>
          {label} <span className="faint">{unit}</span>
        </>
      ),
      ...Object.fromEntries(
        columns.map(({ id, gear, weighed }) => [
          id,
          weighed || needsMass !== true ? read(gear) : '?',
        ]),
      ),
    },
  }));
  rows.push({
    id: 'run',
    cells: {
      figure: text.runTime,
      ...Object.fromEntries(
        columns.map(({ id, minutes }) => [
          id,
          minutes === null ? '' : formatMinutes(minutes, language),
        ]),
      ),
    },
  });
  const open = views.flatMap((view, index) => openQuestions(view, index, text));
  return (
    <Section
      title={text.voltageTitle}
      lead={text.voltageLead(surfaceById(drive.steepestSurface).name[language])}
    >
      <div className="drive-table">
        <DataTable
          caption={text.voltageTitle}
          hideCaption
          columns={[
            { id: 'figure', label: text.figure },
            ...columns.map(({ id, head }) => ({ id, label: head, isNumber: true })),
          ]}
          rows={rows}
        />
      </div>
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
