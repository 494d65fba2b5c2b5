import { standbyCurrentA } from '../../accessories/standby.ts';
import { buildBlockModel, chemistryTraits, readUniform } from '../../battery/index.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import type { Reading } from '../../plan/schema/reading.ts';
import type { OptionStudy } from '../../study/study.ts';
import { fitRoad } from '../road/fit-road.ts';
import { samplesOfReadings } from '../road/road-sample.ts';
import { restHours } from './explain-gap.ts';
import { measuredResistance, plannedResistanceOhm } from './block-resistance.ts';

/** What a reading is held against. */
export type Subject =
  | 'rest-voltage'
  | 'resistance'
  | 'joint-resistance'
  | 'run-time'
  | 'charge-delivered'
  | 'energy-delivered'
  | 'peak-current'
  | 'mean-current'
  | 'speed'
  | 'cruise-current'
  | 'charge-hours'
  | 'standby-current'
  | 'deceleration'
  | 'warming';

/** One measured figure beside the planned one. */
export interface Judgement {
  readonly readingId: string;
  readonly subject: Subject;
  readonly measured: number;
  /** Null where the plan holds nothing to compare with. */
  readonly planned: number | null;
  readonly unit: string;
  /** (measured - planned)/planned [%]; null without a planned figure. */
  readonly offPercent: number | null;
  /** Band within which measured and planned agree [%]. */
  readonly tolerancePercent: number;
  readonly state: 'agrees' | 'better' | 'worse' | 'open';
}

/** How far a plan may be off in each figure before a reading contradicts it [%]. Common practice, no source. */
const planTolerancePercent: Readonly<Record<Subject, number>> = {
  'rest-voltage': 1,
  resistance: 30,
  'joint-resistance': 0,
  'run-time': 12,
  'charge-delivered': 10,
  'energy-delivered': 10,
  'peak-current': 25,
  'mean-current': 12,
  speed: 8,
  'cruise-current': 25,
  'charge-hours': 20,
  'standby-current': 30,
  deceleration: 30,
  warming: 0,
};

/** Subjects where more is the better side. */
const moreIsBetter = new Set<Subject>([
  'rest-voltage',
  'run-time',
  'charge-delivered',
  'energy-delivered',
  'speed',
  'deceleration',
]);

/** A sound joint of this size of machine stays below this [Ω]; parts may warm by so much over the air [K]. Common practice, no source. */
const soundJointOhm = 0.001;
const soundWarmingK = 35;

/** Holds every reading against the plan. `studyOf` gives the figures of an option on an outing where they are known. */
export function judgeReadings(
  plan: Plan,
  readings: readonly Reading[],
  studyOf: (optionId: string, outingId: string) => OptionStudy | null,
): Judgement[] {
  return readings.flatMap((reading) => {
    const option = plan.options.find((entry) => entry.id === reading.optionId);
    return option === undefined ? [] : judge(plan, option, reading, studyOf);
  });
}

function judge(
  plan: Plan,
  option: Option,
  reading: Reading,
  studyOf: (optionId: string, outingId: string) => OptionStudy | null,
): Judgement[] {
  const line = (
    subject: Subject,
    measured: number | null,
    planned: number | null,
    unit: string,
  ): Judgement[] =>
    measured === null ? [] : [judgement(reading, subject, measured, planned, unit)];
  const headline = studyOf(option.id, plan.headlineOuting);
  switch (reading.kind) {
    case 'rest-voltage': {
      const { block, seriesCount } = option.pack;
      const lead = chemistryTraits[block.chemistry].family === 'lead';
      const full = readUniform(buildBlockModel(block).openCircuit, option.startPercent / 100);
      const rested = !lead || reading.hoursSinceCharge >= restHours;
      return line(
        'rest-voltage',
        reading.voltageV,
        rested ? full * (reading.position === 0 ? seriesCount : 1) : null,
        'V',
      );
    }
    case 'loaded-voltage': {
      const measured = measuredResistance(reading);
      return line(
        'resistance',
        measured === null ? null : measured.ohm * 1000,
        plannedResistanceOhm(option, reading) * 1000,
        'mΩ',
      );
    }
    case 'joint-drop':
      return line(
        'joint-resistance',
        reading.dropMv / reading.jointCurrentA,
        soundJointOhm * 1000,
        'mΩ',
      );
    case 'time-to-cutoff':
      return line(
        'run-time',
        reading.timeMin,
        studyOf(option.id, reading.outingId)?.run.runTimeMin ?? null,
        'min',
      );
    case 'watt-meter':
      return [
        ...line(
          'charge-delivered',
          reading.untilCutoff ? reading.chargeAh : null,
          headline?.run.deliveredAh ?? null,
          'A·h',
        ),
        ...line(
          'energy-delivered',
          reading.untilCutoff ? reading.energyWh : null,
          headline?.run.deliveredWh ?? null,
          'W·h',
        ),
        ...line('peak-current', reading.peakCurrentA, headline?.run.peakCurrentA ?? null, 'A'),
        ...line(
          'mean-current',
          reading.overMin === null || reading.overMin === 0
            ? null
            : (reading.chargeAh * 60) / reading.overMin,
          headline?.run.averageCurrentA ?? null,
          'A',
        ),
      ];
    case 'speed':
      // With a current beside it the speed may be any even one: the current is what the plan can be held to.
      if (reading.packCurrentA !== null)
        return line(
          'cruise-current',
          reading.packCurrentA,
          plannedCruiseA(plan, option, reading),
          'A',
        );
      return line(
        'speed',
        (3.6 * reading.distanceM) / reading.timeS,
        headline?.run.drive?.topSpeedKmh ?? null,
        'km/h',
      );
    case 'charge':
      return line('charge-hours', reading.hours, headline?.chargerMatch?.hoursToFull ?? null, 'h');
    case 'standby-current':
      return line(
        'standby-current',
        reading.currentMa,
        headline === null ? null : standbyCurrentA(plan.machine, headline.nominalVoltageV) * 1000,
        'mA',
      );
    case 'stop-distance':
      return line(
        'deceleration',
        reading.stopDistanceM === 0
          ? null
          : (reading.speedKmh / 3.6) ** 2 / (2 * reading.stopDistanceM),
        plan.machine.drive?.brakes.serviceDecelerationMps2 ?? null,
        'm/s²',
      );
    case 'case-temperature':
      return line('warming', reading.caseTemperatureC - reading.ambientC, soundWarmingK, 'K');
  }
}

/** What the plan's machine draws at the speed of a reading [A]; null where its drive does not tell. */
function plannedCruiseA(plan: Plan, option: Option, reading: Reading): number | null {
  const bench = { readings: [reading], fits: [], health: [] };
  const road = fitRoad(plan.machine, option, samplesOfReadings({ ...plan, bench }, option.id));
  return road.ok ? road.fit.modelA : null;
}

function judgement(
  reading: Reading,
  subject: Subject,
  measured: number,
  planned: number | null,
  unit: string,
): Judgement {
  const tolerancePercent = Math.hypot(planTolerancePercent[subject], reading.accuracyPercent);
  const base = { readingId: reading.id, subject, measured, planned, unit, tolerancePercent };
  if (planned === null || planned === 0) return { ...base, offPercent: null, state: 'open' };
  const offPercent = 100 * (measured / planned - 1);
  // Joints and warming have a limit rather than a planned figure: below it all is well.
  const oneSided = subject === 'joint-resistance' || subject === 'warming';
  if (Math.abs(offPercent) <= tolerancePercent || (oneSided && offPercent < 0))
    return { ...base, offPercent, state: 'agrees' };
  return {
    ...base,
    offPercent,
    state: offPercent > 0 === moreIsBetter.has(subject) ? 'better' : 'worse',
  };
}
