import { number } from '../input-spec.ts';

/** Inputs that every formula of the permanent-magnet motor takes. */
export const motorInputs = {
  voltageV: number('V', 0.1, 500, 'voltage at the motor'),
  resistanceOhm: number('Ω', 1e-4, 100, 'resistance of the motor with brushes'),
  constantVsPerRad: number('V·s/rad', 1e-5, 100, 'motor constant, voltage and torque'),
  noLoadCurrentA: number('A', 0, 1000, 'current without load', 0),
} as const;

/** A permanent-magnet motor: resistance [Ω], constant [V·s/rad = N·m/A], no-load current [A]. */
export interface MagnetMotor {
  readonly resistanceOhm: number;
  readonly constantVsPerRad: number;
  readonly noLoadCurrentA: number;
}
