import { buildBlockModel, chemistryTraits, readUniform } from '../../battery/index.ts';
import { newDifference } from '../../plan/defaults.ts';
import type { Difference, Option } from '../../plan/schema/option.ts';
import type { Outing } from '../../plan/schema/outing.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import type { Reading } from '../../plan/schema/reading.ts';
import { runOuting } from '../../run/run-outing.ts';
import { fitRoad } from '../road/fit-road.ts';
import { samplesOfReadings } from '../road/road-sample.ts';
import { measuredResistance, plannedResistanceOhm } from './block-resistance.ts';

/** A difference between plan and machine that a reading shows, and what it does to the run time. */
export interface Cause {
  readonly kind:
    | 'block-resistance'
    | 'block-charge'
    | 'joint'
    | 'road'
    | 'mean-current'
    | 'capacity'
    | 'cold';
  readonly readingId: string;
  /** Block concerned, 0 for the whole pack. */
  readonly string: number;
  readonly position: number;
  /** Run time of the plan with only this difference taken in [min]. */
  readonly runTimeMin: number;
  /** Share of the gap between planned and measured minutes that it explains [%]. */
  readonly explainsPercent: number;
}

export interface Gap {
  readonly plannedMin: number;
  readonly measuredMin: number;
  readonly causes: readonly Cause[];
}

/** Hours after charge or use from which a lead block's rest volts mean something. Common practice, no source. */
export const restHours = 4;

type Variant = { readonly option: Option; readonly plan: Plan; readonly outing: Outing };

/**
 * Why a run was shorter or longer than planned: each reading that differs from the plan is taken in alone, the run is
 * simulated again, and the causes are ranked by how much of the gap they close. Derived.
 *
 * @returns null without a reading of a whole run of the outing
 */
export function explainGap(plan: Plan, optionId: string, outingId: string): Gap | null {
  const option = plan.options.find((entry) => entry.id === optionId);
  const outing = plan.outings.find((entry) => entry.id === outingId);
  if (option === undefined || outing === undefined) return null;
  const own = (plan.bench?.readings ?? []).filter((reading) => reading.optionId === optionId);
  const timed = own.findLast(
    (reading) => reading.kind === 'time-to-cutoff' && reading.outingId === outingId,
  );
  if (timed?.kind !== 'time-to-cutoff') return null;
  const planned = runOuting(option, plan.machine, outing, { full: false });
  const gapMin = timed.timeMin - planned.runTimeMin;
  const causes = own.flatMap((reading): Cause[] => {
    const taken = takeIn(
      { plan, option, outing },
      reading,
      planned.averageCurrentA,
      planned.deliveredAh,
    );
    if (taken === null) return [];
    const {
      option: changed,
      plan: { machine },
      outing: as,
    } = taken.variant;
    const runTimeMin = runOuting(changed, machine, as, { full: false }).runTimeMin * taken.factor;
    return [
      {
        kind: taken.kind,
        readingId: reading.id,
        string: reading.string,
        position: reading.position,
        runTimeMin,
        explainsPercent: gapMin === 0 ? 0 : (100 * (runTimeMin - planned.runTimeMin)) / gapMin,
      },
    ];
  });
  return {
    plannedMin: planned.runTimeMin,
    measuredMin: timed.timeMin,
    causes: causes
      .filter((cause) => cause.explainsPercent > 2)
      .toSorted((a, b) => b.explainsPercent - a.explainsPercent),
  };
}

function takeIn(
  { plan, option, outing }: Variant,
  reading: Reading,
  plannedA: number,
  plannedAh: number,
): { readonly kind: Cause['kind']; readonly variant: Variant; readonly factor: number } | null {
  switch (reading.kind) {
    case 'loaded-voltage': {
      const measured = measuredResistance(reading);
      if (measured === null || measured.ohm <= 0) return null;
      const share = measured.ohm / plannedResistanceOhm(option, reading);
      return {
        kind: 'block-resistance',
        variant: { plan, outing, option: withResistance(option, reading, share) },
        factor: 1,
      };
    }
    case 'rest-voltage': {
      const lead = chemistryTraits[option.pack.block.chemistry].family === 'lead';
      // The flat curve of lithium at rest says too little of its charge to explain minutes with.
      if (!lead || reading.hoursSinceCharge < restHours) return null;
      return {
        kind: 'block-charge',
        variant: { plan, outing, option: withRestVoltage(option, reading) },
        factor: 1,
      };
    }
    case 'speed': {
      const { drive } = plan.machine;
      const samples = samplesOfReadings(
        { ...plan, bench: { readings: [reading], fits: [], health: [] } },
        option.id,
      );
      const road = fitRoad(plan.machine, option, samples);
      if (drive === null || !road.ok) return null;
      const machine = {
        ...plan.machine,
        drive: { ...drive, resistancePercent: road.fit.resistancePercent.value },
      };
      return { kind: 'road', variant: { option, outing, plan: { ...plan, machine } }, factor: 1 };
    }
    case 'joint-drop': {
      const ohm = reading.dropMv / 1000 / reading.jointCurrentA;
      const machine = {
        ...plan.machine,
        harnessResistanceOhm: Math.min(2, plan.machine.harnessResistanceOhm + ohm),
      };
      return { kind: 'joint', variant: { option, outing, plan: { ...plan, machine } }, factor: 1 };
    }
    case 'watt-meter': {
      if (reading.overMin !== null && reading.overMin > 0 && plannedA > 0) {
        // The loads of legs differ in kind; at equal charge the time goes with one over the current.
        return {
          kind: 'mean-current',
          variant: { plan, option, outing },
          factor: plannedA / Math.max(1e-6, (reading.chargeAh * 60) / reading.overMin),
        };
      }
      if (!reading.untilCutoff || plannedAh <= 0) return null;
      return {
        kind: 'capacity',
        variant: { plan, option, outing },
        factor: reading.chargeAh / plannedAh,
      };
    }
    case 'case-temperature':
      if (reading.ambientC >= outing.ambientC - 3) return null;
      return {
        kind: 'cold',
        variant: { plan, option, outing: { ...outing, ambientC: reading.ambientC } },
        factor: 1,
      };
    default:
      return null;
  }
}

/** The option with the resistance of one block, or of all of them, multiplied. */
function withResistance(option: Option, reading: Reading, share: number): Option {
  return withDifference(option, reading, (before) => ({
    ...before,
    resistancePercent: Math.min(2000, Math.max(10, before.resistancePercent * share)),
  }));
}

/** The option with the charge that the rest volts of one block, or the even part of the pack's in each block, tell. */
function withRestVoltage(
  option: Option,
  reading: Extract<Reading, { kind: 'rest-voltage' }>,
): Option {
  const parts = reading.position > 0 ? 1 : option.pack.seriesCount;
  const { openCircuit } = buildBlockModel(option.pack.block);
  let [low, high] = [0, 1];
  for (let round = 0; round < 30; round += 1) {
    const middle = (low + high) / 2;
    if (readUniform(openCircuit, middle) < reading.voltageV / parts) low = middle;
    else high = middle;
  }
  return withDifference(option, reading, (before) => ({
    ...before,
    startPercent: Math.round(1000 * high) / 10,
  }));
}

/** The option with the block a reading was taken at changed, or all blocks where it was taken at the whole pack. */
function withDifference(
  option: Option,
  reading: Reading,
  change: (before: Difference) => Difference,
): Option {
  const { pack } = option;
  const places =
    reading.position > 0
      ? [{ string: reading.string, position: reading.position }]
      : Array.from({ length: pack.parallelCount * pack.seriesCount }, (_, index) => ({
          string: Math.floor(index / pack.seriesCount) + 1,
          position: (index % pack.seriesCount) + 1,
        }));
  const isSame = (
    a: { string: number; position: number },
    b: { string: number; position: number },
  ) => a.string === b.string && a.position === b.position;
  const others = pack.differences.filter((entry) => !places.some((place) => isSame(place, entry)));
  const changed = places.map((place) =>
    change(
      pack.differences.find((entry) => isSame(place, entry)) ??
        newDifference(place.string, place.position),
    ),
  );
  return { ...option, pack: { ...pack, differences: [...others, ...changed] } };
}
