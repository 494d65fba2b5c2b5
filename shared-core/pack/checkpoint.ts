import type { Circuit } from './circuit.ts';

/** Room to keep what changes of a circuit while a step is tried. */
export interface Checkpoint {
  readonly saved: {
    readonly charge: Float64Array;
    readonly lag: Float64Array;
    readonly polarisationV: Float64Array;
    readonly hysteresis: Float64Array;
    readonly previousCurrentA: Float64Array;
    readonly stringCurrentA: Float64Array;
    previousStepS: number;
  };
}

export function createCheckpoint(circuit: Circuit): Checkpoint {
  const { charge, lag, polarisationV, hysteresis, previousCurrentA, stringCurrentA } = circuit;
  return {
    saved: {
      charge: charge.slice(),
      lag: lag.slice(),
      polarisationV: polarisationV.slice(),
      hysteresis: hysteresis.slice(),
      previousCurrentA: previousCurrentA.slice(),
      stringCurrentA: stringCurrentA.slice(),
      previousStepS: 0,
    },
  };
}

// Plain loops: the columns are a few entries long, and `TypedArray.set` costs more than such a copy.
function copyColumn(from: Float64Array, to: Float64Array): void {
  for (let index = 0; index < from.length; index += 1) to[index] = from[index]!;
}

export function keep(circuit: Circuit, { saved }: Checkpoint): void {
  copyColumn(circuit.charge, saved.charge);
  copyColumn(circuit.lag, saved.lag);
  copyColumn(circuit.polarisationV, saved.polarisationV);
  copyColumn(circuit.hysteresis, saved.hysteresis);
  copyColumn(circuit.previousCurrentA, saved.previousCurrentA);
  copyColumn(circuit.stringCurrentA, saved.stringCurrentA);
  saved.previousStepS = circuit.previousStepS;
}

export function restore(circuit: Circuit, { saved }: Checkpoint): void {
  copyColumn(saved.charge, circuit.charge);
  copyColumn(saved.lag, circuit.lag);
  copyColumn(saved.polarisationV, circuit.polarisationV);
  copyColumn(saved.hysteresis, circuit.hysteresis);
  copyColumn(saved.previousCurrentA, circuit.previousCurrentA);
  copyColumn(saved.stringCurrentA, circuit.stringCurrentA);
  circuit.previousStepS = saved.previousStepS;
}
