import type { Circuit } from '../pack/circuit.ts';
import { unitVoltageV } from '../pack/circuit-step.ts';
import { packChargePercent } from '../pack/pack-charge.ts';
import type { BusLoad } from './bus-load.ts';
import { fuseWear } from './fuse-clock.ts';
import type { EndCause, RunEvent } from './result.ts';
import type { RunSetup } from './setup.ts';

/** A BMS opens after this long above its continuous rating [s]. Common practice, no source. */
const continuousOverloadS = 30;

/** What the watch remembers between steps. */
export interface Watch {
  /** Time since which the bus has been below the controller's cutoff [s]; NaN while above. */
  belowSinceS: number;
  mainFuseWear: number;
  readonly stringFuseWear: Float64Array;
  readonly peakS: Float64Array;
  readonly overloadS: Float64Array;
}

export function createWatch(circuit: Circuit): Watch {
  const strings = circuit.multiplicity.length;
  return {
    belowSinceS: Number.NaN,
    mainFuseWear: 0,
    stringFuseWear: new Float64Array(strings),
    peakS: new Float64Array(strings),
    overloadS: new Float64Array(strings),
  };
}

/** Something that trips: the whole run, or one string. */
export interface Trip {
  readonly cause: EndCause;
  readonly value: number;
  /** Index of the string that opens; null when the cause ends the run whatever the strings do. */
  readonly string: number | null;
  readonly unit: number | null;
}

/** Limits of each string's BMS, read once: the lowest of its units. */
interface StringLimits {
  readonly groupLow: readonly {
    readonly unit: number;
    readonly lowV: number;
    readonly groups: number;
  }[];
  readonly peakA: number;
  readonly peakS: number;
  readonly continuousA: number;
  readonly fuseA: number;
}

function stringLimits(circuit: Circuit, string: number): StringLimits {
  const groupLow = [];
  let peakA = Number.POSITIVE_INFINITY;
  let peakS = 0;
  let continuousA = Number.POSITIVE_INFINITY;
  for (
    let unit = circuit.stringStart[string]!;
    unit < circuit.stringStart[string + 1]!;
    unit += 1
  ) {
    const { bms, model } = circuit.units[unit]!;
    if (bms === null) continue;
    groupLow.push({ unit, lowV: bms.groupLowV, groups: model.cellGroups });
    // A BMS without a stated peak is taken to stand twice its continuous current (common practice, no source).
    const peak = bms.peakDischargeA ?? 2 * bms.continuousDischargeA;
    if (peak < peakA) {
      peakA = peak;
      peakS = bms.peakSeconds;
    }
    continuousA = Math.min(continuousA, bms.continuousDischargeA);
  }
  return {
    groupLow,
    peakA,
    peakS,
    continuousA,
    fuseA: circuit.pack.strings[string]!.fuseA ?? Number.POSITIVE_INFINITY,
  };
}

/** Prepares the check that runs after each tried step and says what trips at its end, if anything. */
export function tripChecker(
  setup: RunSetup,
  circuit: Circuit,
  load: BusLoad,
): (watch: Watch, timeS: number, stepS: number, busV: number, busA: number) => Trip | null {
  const limits = Array.from(circuit.multiplicity, (_, string) => stringLimits(circuit, string));
  const watched = limits.some((limit) => limit.groupLow.length > 0 || Number.isFinite(limit.fuseA));
  const mainFuseA = setup.pack.mainFuseA ?? Number.POSITIVE_INFINITY;
  const { cutoffV, cutoffDelayS } = setup;

  return (watch, timeS, stepS, busV, busA) => {
    // At rest, switched off, nothing trips.
    if (!load.on) return null;
    if (cutoffV !== null && busV < cutoffV) {
      if (Number.isNaN(watch.belowSinceS)) watch.belowSinceS = timeS;
      if (timeS - watch.belowSinceS >= cutoffDelayS - 1e-9) {
        return { cause: 'controller-cutoff', value: cutoffV, string: null, unit: null };
      }
    } else watch.belowSinceS = Number.NaN;
    if (Number.isFinite(mainFuseA)) {
      watch.mainFuseWear += fuseWear(busA, mainFuseA, stepS);
      if (watch.mainFuseWear >= 1)
        return { cause: 'main-fuse', value: mainFuseA, string: null, unit: null };
    }
    if (
      setup.depthLimitPercent !== null &&
      100 - packChargePercent(circuit) >= setup.depthLimitPercent
    ) {
      return { cause: 'depth-limit', value: setup.depthLimitPercent, string: null, unit: null };
    }
    if (setup.endWhenEmpty && emptyUnit(circuit) >= 0) {
      return { cause: 'supply-collapse', value: 0, string: null, unit: emptyUnit(circuit) };
    }
    if (!watched) return null;
    for (let string = 0; string < limits.length; string += 1) {
      if (circuit.closed[string] === 0) continue;
      const limit = limits[string]!;
      const current = circuit.stringCurrentA[string]!;
      for (const { unit, lowV, groups } of limit.groupLow) {
        if (unitVoltageV(circuit, string, unit) < lowV * groups) {
          return { cause: 'bms-group-low', value: lowV, string, unit };
        }
      }
      watch.peakS[string] = current > limit.peakA ? watch.peakS[string]! + stepS : 0;
      watch.overloadS[string] = current > limit.continuousA ? watch.overloadS[string]! + stepS : 0;
      if (watch.peakS[string]! > limit.peakS)
        return { cause: 'bms-over-current', value: limit.peakA, string, unit: null };
      if (watch.overloadS[string]! > continuousOverloadS) {
        return { cause: 'bms-over-current', value: limit.continuousA, string, unit: null };
      }
      watch.stringFuseWear[string] =
        watch.stringFuseWear[string]! + fuseWear(current, limit.fuseA, stepS);
      if (watch.stringFuseWear[string]! >= 1)
        return { cause: 'string-fuse', value: limit.fuseA, string, unit: null };
    }
    return null;
  };
}

/** First unit whose available well is empty; -1 when none is. */
function emptyUnit(circuit: Circuit): number {
  return circuit.charge.findIndex((charge, unit) => charge - circuit.lag[unit]! <= 0);
}

export function copyWatch(from: Watch, to: Watch): void {
  to.belowSinceS = from.belowSinceS;
  to.mainFuseWear = from.mainFuseWear;
  // A plain loop: the columns are a few entries long, and `TypedArray.set` costs more than such a copy.
  for (let string = 0; string < to.peakS.length; string += 1) {
    to.stringFuseWear[string] = from.stringFuseWear[string]!;
    to.peakS[string] = from.peakS[string]!;
    to.overloadS[string] = from.overloadS[string]!;
  }
}

/** Words a trip as an event of the run. */
export function tripEvent(trip: Trip, circuit: Circuit, timeS: number, busV: number): RunEvent {
  const unit = trip.unit === null ? null : circuit.units[trip.unit]!;
  return {
    kind: trip.cause,
    timeMin: timeS / 60,
    busVoltageV: busV,
    value: trip.value,
    ...(trip.string === null ? {} : { string: circuit.pack.strings[trip.string]!.strings[0]! }),
    ...(unit === null ? {} : { position: unit.positions[0]! }),
    ...(unit === null || unit.group === null ? {} : { group: unit.group }),
  };
}
