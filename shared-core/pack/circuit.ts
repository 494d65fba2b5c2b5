import { restTable } from './head-tables.ts';
import type { PackModel, PackUnit } from './pack-model.ts';

/** How fast the hysteresis follows: full swing within about a twentieth of the charge. Common practice, no source. */
const hysteresisRate = 20;

/**
 * State and constants of a pack as flat columns, one entry per unit or per string. The stepping functions in
 * `circuit-step.ts` work on it in place: a run of tens of thousands of steps allocates nothing.
 */
export interface Circuit {
  readonly pack: PackModel;
  readonly units: readonly PackUnit[];
  readonly stringStart: Int32Array;
  // Constants of units
  readonly count: Float64Array;
  readonly inverseChargePerAs: Float64Array;
  readonly lagGain: Float64Array;
  readonly levellingPerS: Float64Array;
  readonly polarisationOhm: Float64Array;
  readonly polarisationPerS: Float64Array;
  readonly hysteresisV: Float64Array;
  readonly belowTap: Float64Array;
  readonly heatPerK: Float64Array;
  readonly coolingPerS: Float64Array;
  readonly coldRatePerK: Float64Array;
  readonly ambientC: number;
  readonly resistanceOhm: Float64Array;
  readonly kneeOhm: Float64Array;
  /** Open-circuit voltage of each unit over the grid of heads. */
  readonly restTables: readonly Float64Array[];
  // State of units
  readonly charge: Float64Array;
  readonly lag: Float64Array;
  readonly polarisationV: Float64Array;
  readonly hysteresis: Float64Array;
  readonly temperatureC: Float64Array;
  readonly warmth: Float64Array;
  /** Heat set free since the temperature was last brought up to date [J]. */
  readonly heatJ: Float64Array;
  // Derived from the state by `refresh`
  readonly emfV: Float64Array;
  readonly ohm: Float64Array;
  // Strings
  readonly multiplicity: Float64Array;
  readonly linkOhm: Float64Array;
  readonly closed: Uint8Array;
  readonly stringEmfV: Float64Array;
  readonly stringOhm: Float64Array;
  readonly stringCurrentA: Float64Array;
  readonly previousCurrentA: Float64Array;
  /** Current each string was advanced with in the last step. */
  readonly usedCurrentA: Float64Array;
  /** Bus voltage [V] and bus current [A] of the last solution. */
  readonly bus: Float64Array;
  /** Length of the step that `previousCurrentA` belongs to [s]; 0 when there is none to extrapolate from. */
  previousStepS: number;
  /** Current drawn from the mid-point of each string [A]. */
  tapA: number;
  readonly propagators: Map<number, Float64Array>;
  /** The step length asked for last, and its factors. */
  lastStepS: number;
  lastFactors: Float64Array;
}

/** Lays out a pack for stepping, every string closed, at rest. */
export function createCircuit(pack: PackModel, ambientC: number): Circuit {
  const units = pack.strings.flatMap((string) => string.units);
  const column = (read: (unit: PackUnit) => number) => Float64Array.from(units, read);
  const stringStart = new Int32Array(pack.strings.length + 1);
  pack.strings.forEach((string, index) => {
    stringStart[index + 1] = stringStart[index]! + string.units.length;
  });
  const strings = pack.strings.length;
  return {
    pack,
    units,
    stringStart,
    count: column((unit) => unit.count),
    inverseChargePerAs: column(({ model }) => 1 / (model.capacityAh * 3600)),
    lagGain: column(({ model }) =>
      model.availableShare >= 1
        ? 0
        : (1 - model.availableShare) /
          (model.availableShare * model.levellingPerS * model.capacityAh * 3600),
    ),
    levellingPerS: column(({ model }) => model.levellingPerS),
    polarisationOhm: column(({ model }) => model.polarisationOhm),
    polarisationPerS: column(({ model }) => 1 / model.polarisationS),
    hysteresisV: column(({ model }) => model.hysteresisV),
    belowTap: column((unit) => (unit.belowTap ? 1 : 0)),
    heatPerK: column(({ model }) => 1 / model.heatCapacityJPerK),
    coolingPerS: column(({ model }) => 1 / (model.heatResistanceKPerW * model.heatCapacityJPerK)),
    coldRatePerK: column(({ model }) => model.resistanceColdRatePerK),
    ambientC,
    resistanceOhm: column(({ model }) => model.resistanceOhm),
    kneeOhm: column(({ model }) => model.kneeOhm),
    restTables: units.map(({ model }) => restTable(model)),
    charge: column((unit) => unit.startCharge),
    lag: new Float64Array(units.length),
    polarisationV: new Float64Array(units.length),
    hysteresis: new Float64Array(units.length),
    temperatureC: column(({ model }) => model.temperatureC),
    warmth: new Float64Array(units.length).fill(1),
    heatJ: new Float64Array(units.length),
    emfV: new Float64Array(units.length),
    ohm: new Float64Array(units.length),
    multiplicity: Float64Array.from(pack.strings, (string) => string.strings.length),
    linkOhm: Float64Array.from(pack.strings, (string) => string.linkOhm),
    closed: new Uint8Array(strings).fill(1),
    stringEmfV: new Float64Array(strings),
    stringOhm: new Float64Array(strings),
    stringCurrentA: new Float64Array(strings),
    previousCurrentA: new Float64Array(strings),
    usedCurrentA: new Float64Array(strings),
    bus: new Float64Array(2),
    previousStepS: 0,
    tapA: 0,
    propagators: new Map(),
    lastStepS: Number.NaN,
    lastFactors: new Float64Array(0),
  };
}

/** Exact decay factors of lag and polarisation over a step, four numbers per unit; kept for the step lengths in use. */
export function propagator(circuit: Circuit, stepS: number): Float64Array {
  if (stepS === circuit.lastStepS) return circuit.lastFactors;
  let factors = circuit.propagators.get(stepS);
  if (factors === undefined) {
    const { units, levellingPerS, lagGain, polarisationPerS, polarisationOhm } = circuit;
    factors = new Float64Array(4 * units.length);
    for (let unit = 0; unit < units.length; unit += 1) {
      const levelled = -Math.expm1(-levellingPerS[unit]! * stepS);
      const polarised = -Math.expm1(-polarisationPerS[unit]! * stepS);
      factors[4 * unit] = 1 - levelled;
      factors[4 * unit + 1] = lagGain[unit]! * levelled;
      factors[4 * unit + 2] = 1 - polarised;
      factors[4 * unit + 3] = polarisationOhm[unit]! * polarised;
    }
    if (circuit.propagators.size > 64) circuit.propagators.clear();
    circuit.propagators.set(stepS, factors);
  }
  circuit.lastStepS = stepS;
  circuit.lastFactors = factors;
  return factors;
}

export { hysteresisRate };
