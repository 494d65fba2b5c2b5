import type { Circuit } from './circuit.ts';

/** Columns that change during a step. */
const columns = [
  'charge',
  'lag',
  'polarisationV',
  'hysteresis',
  'previousCurrentA',
  'stringCurrentA',
] as const;

/** Room to keep a circuit's state while a step is tried. */
export interface Checkpoint {
  readonly saved: Readonly<Record<(typeof columns)[number], Float64Array>>;
  previousStepS: number;
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
    },
    previousStepS: 0,
  };
}

export function keep(circuit: Circuit, checkpoint: Checkpoint): void {
  for (const column of columns) checkpoint.saved[column].set(circuit[column]);
  checkpoint.previousStepS = circuit.previousStepS;
}

export function restore(circuit: Circuit, checkpoint: Checkpoint): void {
  for (const column of columns) circuit[column].set(checkpoint.saved[column]);
  circuit.previousStepS = checkpoint.previousStepS;
}
