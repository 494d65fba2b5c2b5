import type { DriveTrain, GearTrain } from './drive-train.ts';
import { e12Near } from './e12.ts';
import { resistorOverload } from '../formulas/drive/resistor-overload.ts';
import { descent } from './resistor-heat.ts';
import type { Road } from './road.ts';
import { roadForceN } from './road.ts';
import { stopping } from './stopping.ts';
import type { Stopping } from './stopping.ts';

/** A resistor for a wished deceleration. */
export type BrakeSizing =
  | {
      readonly ok: true;
      /** Exact value for the wish [Ω]. */
      readonly wishedOhm: number;
      /** Standard value chosen: the nearest of the E12 series. */
      readonly standardOhm: number;
      /** What the standard value does. */
      readonly stop: Stopping;
      readonly averageW: number;
      /** Smallest usual rating that stands the pulse and the average [W]. */
      readonly ratedW: number;
      readonly ratedBy: 'pulse' | 'energy' | 'average' | 'descent';
      /** Continuous power while it creeps down the slope [W]; 0 without one. */
      readonly descentW: number;
    }
  | {
      readonly ok: false;
      readonly reason: 'rolls-out' | 'short-is-too-weak';
      readonly reachableMps2: number;
    };

/** Ratings the trade keeps [W]. Common practice, no source. */
const usualRatingsW = [5, 10, 25, 50, 100, 150, 200, 300, 500, 750, 1000, 1500, 2000, 3000];
/** A resistor in the open air is run at no more than half its rating on average. Common practice, no source. */
const averageShare = 0.5;

/**
 * From a wished first deceleration to ohms, peak watts, joules, an E12 value and a rating.
 *
 * `m a = F_roll + k (I + I0)/eta`, `Rb = k v/I - R`. Rating: peak power within 5 times rated for 5 s, one stop's energy
 * within that pulse, average of repeated stops within half of the rating, a long descent within the rating.
 *
 * @param speedMps from which it stops, above 0
 * @param decelerationMps2 wished, above 0
 * @param stopsPerHour 0 or more
 * @param down the steepest slope driven down; null where there is none
 * Source: motor and motion equations (derived); overload as in MIL-PRF-49465, from memory; IEC 60063 for the series.
 */
export function sizeBrakeResistor(
  train: DriveTrain,
  gear: GearTrain,
  road: Road,
  speedMps: number,
  decelerationMps2: number,
  stopsPerHour: number,
  down: Road | null = null,
): BrakeSizing {
  const k = gear.forcePerA;
  const wantedN = road.inertiaKg * decelerationMps2 - roadForceN(road, speedMps);
  const currentA = (wantedN * gear.efficiency) / k - gear.frictionA;
  const rolling = { ...train, brakes: { ...train.brakes, onRelease: 'coast' as const } };
  if (currentA <= 0) {
    return {
      ok: false,
      reason: 'rolls-out',
      reachableMps2: stopping(rolling, gear, road, speedMps, 24).decelerationMps2,
    };
  }
  const wishedOhm = (k * speedMps) / currentA - gear.resistanceOhm;
  if (wishedOhm <= 0) {
    const short = { ...train, brakes: { ...train.brakes, onRelease: 'short' as const } };
    return {
      ok: false,
      reason: 'short-is-too-weak',
      reachableMps2: stopping(short, gear, road, speedMps, 24).decelerationMps2,
    };
  }
  const standardOhm = e12Near(wishedOhm).nearest;
  const fitted: DriveTrain = {
    ...train,
    brakes: {
      ...train.brakes,
      onRelease: 'resistor',
      resistor: {
        resistanceOhm: standardOhm,
        ratedPowerW: null,
        overloadFactor: resistorOverload.timesRated,
        pulseEnergyJ: null,
        heatTimeS: null,
        riseAtRatedK: null,
      },
    },
  };
  const stop = stopping(fitted, gear, road, speedMps, 24);
  const averageW = (stop.resistorJ * stopsPerHour) / 3600;
  const descentW = down === null ? 0 : descent(gear, down, standardOhm).resistorW;
  const needs = [
    ['pulse', stop.resistorPeakW / resistorOverload.timesRated],
    ['energy', stop.resistorJ / (resistorOverload.timesRated * resistorOverload.timeS)],
    ['average', averageW / averageShare],
    ['descent', descentW],
  ] as const;
  const [ratedBy, neededW] = needs.reduce((most, need) => (need[1] > most[1] ? need : most));
  const ratedW =
    usualRatingsW.find((rating) => rating >= neededW) ?? Math.ceil(neededW / 1000) * 1000;
  return { ok: true, wishedOhm, standardOhm, stop, averageW, ratedW, ratedBy, descentW };
}
