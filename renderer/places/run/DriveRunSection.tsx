import type { DriveResult } from '#core/drive/drive-result.ts';
import type { PlanStudy } from '#core/study/study.ts';
import { DataTable } from '../../controls/DataTable.tsx';
import { Section } from '../../controls/Section.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { driveTexts } from '../../text/drive.ts';
import type { DriveTexts } from '../../text/drive.ts';
import { formatFigure, formatFixed } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import '../machine/drive/drive.css';

type RowId = keyof DriveTexts['runRows'];

/** Figures of the drive in the order a reader asks for them, with their units. */
const figures: readonly (readonly [
  id: RowId,
  unit: string,
  read: (drive: DriveResult) => number | null,
])[] = [
  ['distance', 'km', (drive) => drive.distanceKm],
  ['rolling', 'km/h', (drive) => drive.rollingSpeedKmh],
  ['top', 'km/h', (drive) => drive.topSpeedKmh],
  ['perKm', 'W·h/km', (drive) => drive.energyPerKmWh],
  ['starts', '', (drive) => drive.startsDone],
  ['eachRms', 'A', (drive) => drive.eachMotorRmsA],
  ['motorPeak', 'A', (drive) => drive.motorPeakA],
  ['packRms', 'A', (drive) => drive.batteryRmsA],
  ['packPeak', 'A', (drive) => drive.batteryPeakA],
  ['temperature', '°C', (drive) => drive.motorPeakTemperatureC],
  ['shaft', 'W', (drive) => drive.motorShaftPowerW],
  ['slip', 's', (drive) => drive.slipS],
  ['below', 'min', (drive) => drive.belowTargetS / 60],
  ['stalled', 's', (drive) => drive.stalledS],
  ['rollsBack', 's', (drive) => drive.rollsBackS],
  ['returned', 'A·h', (drive) => drive.returnedAh],
];

const sinks = [
  'controllerLossWh',
  'windingLossWh',
  'motorFrictionWh',
  'gearLossWh',
  'slipWh',
  'rollingWh',
  'climbingWh',
  'airWh',
  'electricBrakeWh',
  'mechanicalBrakeWh',
  'motionWh',
] as const;

/** What the wheels did, and where the motor circuit's energy went; absent for outings without driven legs. */
export const DriveRunSection = ({ study }: { readonly study: PlanStudy }) => {
  const text = useText(driveTexts);
  const language = useSettings((state) => state.language);
  const driven = study.options.flatMap(({ id, name, run }) =>
    run.drive === null ? [] : [{ id, name, drive: run.drive }],
  );
  if (driven.length === 0) return null;
  const heads = driven.map(({ id, name }) => ({ id, label: name, isNumber: true }));
  const cells = (read: (drive: DriveResult) => string) =>
    Object.fromEntries(driven.map(({ id, drive }) => [id, read(drive)]));
  const figure = (value: number | null): string =>
    value === null ? '?' : formatFigure(value, language);
  return (
    <div className="run-pair drive-table">
      <Section title={text.runTitle} lead={text.runLead}>
        <DataTable
          caption={text.runTitle}
          hideCaption
          columns={[{ id: 'figure', label: text.figure }, ...heads]}
          rows={figures
            .filter(([, , read]) => driven.some(({ drive }) => read(drive) !== 0))
            .map(([id, unit, read]) => ({
              id,
              cells: {
                figure: (
                  <>
                    {text.runRows[id]} <span className="faint">{unit}</span>
                  </>
                ),
                ...cells((drive) => figure(read(drive))),
              },
            }))}
        />
      </Section>
      <Section title={text.wheelTitle} lead={text.wheelLead}>
        <DataTable
          caption={text.wheelTitle}
          hideCaption
          columns={[{ id: 'sink', label: text.wheelTitle, unit: 'W·h' }, ...heads]}
          rows={sinks
            .filter((sink) => driven.some(({ drive }) => Math.abs(drive.ledger[sink]) >= 0.005))
            .map((sink) => ({
              id: sink,
              cells: {
                sink: text.wheel[sink],
                ...cells(({ ledger }) =>
                  ledger.fromPackWh > 0
                    ? `${figure(ledger[sink])} (${formatFixed((100 * ledger[sink]) / ledger.fromPackWh, language, 1)} %)`
                    : figure(ledger[sink]),
                ),
              },
            }))}
        />
      </Section>
    </div>
  );
};
