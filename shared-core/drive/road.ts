import { gravityMPerS2, slopeOfGrade } from '../formulas/drive/gravity.ts';
import type { SurfaceId } from '../plan/schema/surface.ts';
import type { DriveTrain } from './drive-train.ts';
import { surfaceById } from './surfaces.ts';

/** Density of air at 15 °C and sea level [kg/m³]. */
export const airDensityKgM3 = 1.225;

/** One stretch as the wheels feel it. Forces [N] against the motion are positive. */
export interface Road {
  readonly rollingN: number;
  /** Positive uphill. */
  readonly climbN: number;
  /** Air force over the square of the air speed [N s²/m²]. */
  readonly airNs2PerM2: number;
  readonly windMps: number;
  /** Mass that has to be set in motion, rotating parts included [kg]. */
  readonly inertiaKg: number;
  /** Largest force the driven wheels pass on [N]. */
  readonly gripN: number;
}

/**
 * Forces of a stretch: `m g (Crr cos a + sin a)`, air `1/2 rho CdA (v + wind)^2`, grip `mu m g cos a` times the share of
 * the weight on the driven wheels.
 *
 * @param gradePercent rise over run [%]
 * @param headwindKmh against the machine [km/h]
 * @param loadPercent share of the stated load that is aboard [%]
 * Assumes a steady slope and no weight shift. Source: Marks' Standard Handbook for Mechanical Engineers; derived.
 */
export function roadOf(
  train: DriveTrain,
  surface: SurfaceId,
  gradePercent: number,
  headwindKmh: number,
  loadPercent = 100,
): Road {
  const entry = surfaceById(surface);
  const { sine, cosine } = slopeOfGrade(gradePercent);
  const massKg = train.massKg + train.payloadKg * (loadPercent / 100 - 1);
  const weightN = massKg * gravityMPerS2;
  const normalN = weightN * cosine;
  const grip = train.tread === 'rubber' ? entry.gripRubber : entry.gripPlastic;
  return {
    rollingN: normalN * entry.rolling * train.resistanceShare,
    climbN: weightN * sine,
    airNs2PerM2: 0.5 * airDensityKgM3 * train.dragAreaM2,
    windMps: headwindKmh / 3.6,
    inertiaKg: massKg * train.inertiaFactor,
    gripN: grip * normalN * train.drivenShare,
  };
}

/** Resistance at a speed of 0 or more [m/s], in newtons; negative where the machine is pushed. */
export function roadForceN(road: Road, speedMps: number): number {
  const airMps = speedMps + road.windMps;
  return road.rollingN + road.climbN + road.airNs2PerM2 * airMps * Math.abs(airMps);
}

/** How the resistance rises with speed [N s/m]. */
export function roadSlope(road: Road, speedMps: number): number {
  return 2 * road.airNs2PerM2 * Math.abs(speedMps + road.windMps);
}
