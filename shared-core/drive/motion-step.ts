import { newOperatingPoint } from './operating-point.ts';
import type { OperatingPoint } from './operating-point.ts';

/** State of motion. */
export interface MotionState {
  speedMps: number;
  duty: number;
  windingC: number;
  /** 1, or the share of the current limits while the controller limps. */
  limitShare: number;
  busV: number;
}

/** The step in hand: an operating point with the motion it causes. Mutable, reused. */
export interface MotionStep {
  readonly point: OperatingPoint;
  accelerationMps2: number;
  dampingPerS: number;
  mechanicalBrakeN: number;
  holding: boolean;
  pulling: boolean;
  /** Standing on a slope that nothing holds it on: it would roll backwards, which is not followed. */
  rollsBack: boolean;
  /** The duty has reached what the pedal asks. */
  rampDone: boolean;
  /** Speed at the step's begin, on average and at its end [m/s]. */
  before: number;
  mean: number;
  after: number;
}

export function newMotionStep(): MotionStep {
  return {
    point: newOperatingPoint(),
    accelerationMps2: 0,
    dampingPerS: 0,
    mechanicalBrakeN: 0,
    holding: false,
    pulling: false,
    rollsBack: false,
    rampDone: true,
    before: 0,
    mean: 0,
    after: 0,
  };
}
