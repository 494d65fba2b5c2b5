import type { BrakeResistor } from '../plan/schema/braking.ts';
import type { DriveTrain, GearTrain } from './drive-train.ts';
import type { Road } from './road.ts';
import { roadForceN } from './road.ts';

/** What a stop, repeated stops and a long descent do to the brake resistor. */
export interface ResistorHeat {
  /** Rise of one stop from cold, nothing given off meanwhile [K]. */
  readonly oneStopK: number;
  /** Highest rise after many stops at that pace [K]. */
  readonly repeatedK: number;
  readonly averageW: number;
  /** Energy the part stands in one pulse [J]. */
  readonly pulseLimitJ: number;
  /** Power the part stands for 5 s [W]. */
  readonly overloadLimitW: number;
}

/** Usual of wirewound parts in a metal case. Common practice, no source. */
export const assumedResistorTimeS = 150;
export const assumedRiseAtRatedK = 250;
const pulseS = 5;

/**
 * Heat of a brake resistor as one thermal node with time constant tau and rise at rated power: `C = tau P/dT`.
 *
 * @param stopJ energy in the resistor per stop [J]
 * @param stopsPerHour 0 or more
 * @returns null where the rated power is not known
 * Source: one-node heat balance (derived); 5 s overload as in MIL-PRF-49465, from memory.
 */
export function resistorHeat(
  resistor: BrakeResistor,
  stopJ: number,
  stopsPerHour: number,
): ResistorHeat | null {
  const { ratedPowerW } = resistor;
  if (ratedPowerW === null) return null;
  const kelvinPerW = (resistor.riseAtRatedK ?? assumedRiseAtRatedK) / ratedPowerW;
  const timeS = resistor.heatTimeS ?? assumedResistorTimeS;
  const oneStopK = (stopJ * kelvinPerW) / timeS;
  const averageW = (stopJ * stopsPerHour) / 3600;
  // Pulses at an even pace: the geometric series of what is left of each when the next comes.
  const left = stopsPerHour > 0 ? Math.exp(-3600 / stopsPerHour / timeS) : 0;
  return {
    oneStopK,
    repeatedK: oneStopK / (1 - left),
    averageW,
    pulseLimitJ: resistor.pulseEnergyJ ?? resistor.overloadFactor * ratedPowerW * pulseS,
    overloadLimitW: resistor.overloadFactor * ratedPowerW,
  };
}

/**
 * Rise of the resistor once a power has settled [K], `dT P/Prated`; null where the rated power is not known.
 *
 * @param powerW continuous power in the resistor [W]
 * Source: one-node heat balance (derived).
 */
export function settledRiseK(resistor: BrakeResistor, powerW: number): number | null {
  return resistor.ratedPowerW === null
    ? null
    : ((resistor.riseAtRatedK ?? assumedRiseAtRatedK) * powerW) / resistor.ratedPowerW;
}

/** Rolling down a slope on the electric brake alone. */
export interface Descent {
  /** Speed at which brake and slope balance [m/s]; infinite where nothing brakes electrically. */
  readonly creepMps: number;
  readonly motorA: number;
  /** Continuous power in the resistor [W]. */
  readonly resistorW: number;
}

/**
 * Balance of slope and electric brake, `v = F (Ra + Rb)/k^2` with gear and motor friction taken off. It never holds.
 *
 * @param road a slope driven down; no balance is needed where the rolling resistance holds
 * @param brakeOhm resistor, 0 for a short [Ω]
 * Assumes air drag negligible at creeping speed. Source: derived.
 */
export function descent(gear: GearTrain, road: Road, brakeOhm: number): Descent {
  const pushN = -roadForceN({ ...road, airNs2PerM2: 0 }, 0);
  const currentA = (pushN * gear.efficiency) / gear.forcePerA - gear.frictionA;
  if (currentA <= 0) return { creepMps: 0, motorA: 0, resistorW: 0 };
  return {
    creepMps: (currentA * (gear.resistanceOhm + brakeOhm)) / gear.forcePerA,
    motorA: currentA,
    resistorW: currentA ** 2 * brakeOhm,
  };
}

/** The gear in which the electric brake is hardest: the one with the highest voltage per speed. */
export function hardestGear(train: DriveTrain): GearTrain {
  return train.gears.reduce((most, gear) =>
    gear.forcePerA ** 2 / gear.resistanceOhm > most.forcePerA ** 2 / most.resistanceOhm
      ? gear
      : most,
  );
}
