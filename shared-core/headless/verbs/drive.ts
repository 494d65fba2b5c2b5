import { compareWays } from '../../drive/compare-ways.ts';
import type { WayRow } from '../../drive/compare-ways.ts';
import { fitMotor } from '../../drive/motor-constants.ts';
import { motorPoints } from '../../drive/motor-points.ts';
import { stopHelp } from '../../drive/stop-help.ts';
import type { StopHelp } from '../../drive/stop-help.ts';
import { voltageView } from '../../drive/voltage-view.ts';
import type { VoltageView } from '../../drive/voltage-view.ts';
import type { Machine } from '../../plan/schema/machine.ts';
import type { Option } from '../../plan/schema/option.ts';
import { formatSignificant } from '../../units/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOptions, findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan } from '../load-plan.ts';
import { done, jsonOption, outingOption, refuse, type Verb } from '../verb.ts';

const usual = { decelerationMps2: 1.2, stopsPerHour: 30 } as const;

export const driveVerb: Verb = {
  name: 'drive',
  usage: 'FILE [options]',
  summary: 'print what each voltage does to speed, start and climbing, the motor, a stop, the ways',
  details: [
    'Where a figure is missing a question stands instead. The ways set the outing by amps, by log and by the',
    'motor model beside each other, as far as its legs are known so.',
  ],
  options: [
    jsonOption,
    outingOption,
    { name: '--option', value: 'ID', meaning: 'only this option' },
    {
      name: '--deceleration',
      value: 'M/S2',
      meaning: 'wished when the pedal is let go, for the brake resistor [m/s²]; 1.2',
    },
    { name: '--stops', value: 'N', meaning: 'stops an hour, for its rating; 30' },
  ],
  arguments: [1, 1],
  async run({ positional: [path], value, has, host }) {
    const decelerationMps2 = positive(value('--deceleration'), usual.decelerationMps2);
    const stopsPerHour = positive(value('--stops'), usual.stopsPerHour);
    if (decelerationMps2 === null) return refuse('--deceleration: give a number above 0.');
    if (stopsPerHour === null) return refuse('--stops: give a number above 0.');
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const { machine } = loaded.plan;
    const outing = findOuting(loaded.plan, value('--outing'));
    if (!outing.ok) return refuse(outing.line);
    const found = findOptions(loaded.plan, value('--option'));
    if (!found.ok) return refuse(found.line);
    const options = found.options.map((option) => ({
      option,
      view: voltageView(machine, option),
      stop: stopHelp(machine, option, null, null, decelerationMps2, stopsPerHour),
    }));
    const ways = compareWays(machine, found.options, outing.outing);
    if (has('--json')) {
      host.out(
        jsonText({
          outing: outing.outing.id,
          motor: motorRecord(machine),
          options: options.map(({ option: { id, name }, view, stop }) => ({
            id,
            name,
            view,
            stop,
          })),
          ways,
        }),
      );
      return done;
    }
    if (machine.drive === null) host.out('The machine has no drive described.\n\n');
    else host.out(`${motorLine(machine)}\n\n`);
    for (const { view, stop } of options) host.out(`${viewText(view)}${stopText(stop)}\n`);
    host.out(waysText(ways, found.options));
    return done;
  },
};

function positive(text: string | undefined, usualValue: number): number | null {
  if (text === undefined) return usualValue;
  const number = Number(text);
  return Number.isFinite(number) && number > 0 ? number : null;
}

/** The fitted motor, or what keeps it from being fitted; null without a drive. */
function motorRecord({ drive }: Machine) {
  if (drive === null) return null;
  const fit = fitMotor(drive.motor);
  return fit.ok
    ? { fitted: fit.constants, points: motorPoints(drive.motor, fit.constants) }
    : { fitted: null, field: fit.field, problem: fit.problem, remedy: fit.remedy };
}

const say = (value: number, unit: string): string => `${formatSignificant(value, 3, 'en')} ${unit}`;

function motorLine({ drive }: Machine): string {
  const fit = fitMotor(drive!.motor);
  if (!fit.ok) return `Motor: ${fit.problem}. ${fit.remedy}`;
  const { resistanceOhm, backEmfVs, noLoadCurrentA } = fit.constants;
  const points = motorPoints(drive!.motor, fit.constants);
  return [
    `Motor "${drive!.motor.name}": ${say(1000 * resistanceOhm, 'mΩ')}`,
    say(30 / Math.PI / backEmfVs, 'rpm/V'),
    `${say(noLoadCurrentA, 'A')} without load`,
    `${say(points.stallA, 'A')} stalled`,
    `best efficiency ${say(100 * points.bestEfficiency, '%')} at ${say(points.bestA, 'A')}`,
  ].join(', ');
}

function viewText(view: VoltageView): string {
  if (!view.ok) return `${view.optionName}: ${view.problem}. ${view.remedy}\n`;
  const figure = (value: number | null): string =>
    value === null ? '?' : formatSignificant(value, 3, 'en');
  const weighed = !view.questions.some(({ about }) => about === 'pack-mass');
  const climbing = (value: number | null): string => (weighed ? figure(value) : '?');
  const table = alignedTable(
    [
      'Gear',
      'Top km/h',
      'Motor V %',
      'Start A each',
      'Start pack A',
      'Push N',
      'Climbs %',
      'Load %',
    ],
    view.gears.map((gear) => [
      gear.gearName,
      figure(gear.topSpeedKmh),
      figure(gear.voltagePercent),
      figure(gear.startEachMotorA),
      figure(gear.startBatteryA),
      figure(gear.startForceN),
      climbing(gear.climbLimitPercent),
      climbing(gear.gradeRatedPercent),
    ]),
  );
  const questions = view.questions.map(({ path }) => `  not known: ${path}\n`).join('');
  return `${view.optionName}, full at ${say(view.fullV, 'V')}\n${table}${questions}`;
}

function stopText(help: StopHelp | null): string {
  if (help === null) return '';
  const { planned, sizing, speedKmh } = help;
  const creep = Number.isFinite(planned.creepKmh)
    ? `creeps at ${say(planned.creepKmh, 'km/h')} on the steepest grade`
    : 'rolls freely on the steepest grade';
  const now = `Pedal let go at ${say(speedKmh, 'km/h')}: ${say(planned.stop.decelerationMps2, 'm/s²')}, ${say(planned.stop.peakMotorA, 'A')}, ${creep}.`;
  const wish = sizing.ok
    ? `For the wish: ${say(sizing.standardOhm, 'Ω')} (exact ${say(sizing.wishedOhm, 'Ω')}), ${say(sizing.stop.resistorPeakW, 'W')} peak, ${say(sizing.stop.resistorJ, 'J')} a stop, rated ${say(sizing.ratedW, 'W')} at least.`
    : `For the wish: ${sizing.reason}, ${say(sizing.reachableMps2, 'm/s²')} reachable.`;
  return `${now}\n${wish}\n`;
}

function waysText(rows: readonly WayRow[], options: readonly Option[]): string {
  if (rows.length === 0) return '';
  const figure = (value: number | null): string =>
    value === null ? '?' : formatSignificant(value, 3, 'en');
  return alignedTable(
    ['Way', 'Legs', 'Option', 'Run min', 'Average A', 'Peak A'],
    rows.flatMap(({ way, known, of, runs }) =>
      runs.map((run) => [
        way,
        `${known} of ${of}`,
        options.find(({ id }) => id === run.optionId)?.name ?? run.optionId,
        figure(run.runTimeMin),
        figure(run.averageA),
        figure(run.peakA),
      ]),
    ),
  );
}
