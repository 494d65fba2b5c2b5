import type { Circuit } from '../pack/circuit.ts';
import type { March } from '../pack/march.ts';
import type { BusLoad } from './bus-load.ts';
import type { RunSetup } from './setup.ts';

/** Distance kept from anything that could trip [V] of the bus, and per cell group. */
const busMarginV = 0.3;
const groupMarginV = 0.1;

/** Whether equal steps may be taken in one go: only where nobody wants to see each of them. */
export function mayMarch(setup: RunSetup): boolean {
  return (
    setup.stepping.kind === 'fixed' &&
    !setup.full &&
    setup.depthLimitPercent === null &&
    !setup.endWhenEmpty
  );
}

/** Bounds within which nothing can trip, and empty sums. */
export function newMarch(setup: RunSetup, circuit: Circuit, load: BusLoad): March {
  let watchAboveA =
    (setup.pack.mainFuseA ?? Number.POSITIVE_INFINITY) /
    circuit.multiplicity.reduce((a, b) => a + b, 0);
  for (const { fuseA, units } of setup.pack.strings) {
    watchAboveA = Math.min(watchAboveA, fuseA ?? Number.POSITIVE_INFINITY);
    for (const { bms } of units)
      watchAboveA = Math.min(watchAboveA, bms?.continuousDischargeA ?? Number.POSITIVE_INFINITY);
  }
  return {
    watchBelowV: Math.max(setup.cutoffV ?? 0, load.steadyAboveV) + busMarginV,
    watchAboveA,
    watchUnitBelowV: Float64Array.from(circuit.units, ({ bms, model }) =>
      bms === null ? Number.NEGATIVE_INFINITY : model.cellGroups * (bms.groupLowV + groupMarginV),
    ),
    chargeAs: 0,
    energyWs: 0,
    lowestBusV: Number.POSITIVE_INFINITY,
    peakA: 0,
  };
}
