import type { Motor } from '../plan/schema/motor.ts';

/** Where a figure of the fitted motor comes from. */
export type Origin = 'given' | 'derived' | 'assumed';

/** A brushed permanent-magnet motor: `V = I R + Ke w`, `T = Ke (I - I0)`. */
export interface MotorConstants {
  /** Winding with brushes at 20 °C [Ω]. */
  readonly resistanceOhm: number;
  /** Ke [V s/rad], equal to the torque constant [N m/A]. */
  readonly backEmfVs: number;
  /** I0 [A]: what friction and iron loss take, held to be the same at every speed. */
  readonly noLoadCurrentA: number;
  readonly resistanceOrigin: Origin;
  readonly backEmfOrigin: Origin;
  readonly noLoadOrigin: Origin;
}

export type MotorFit =
  | { readonly ok: true; readonly constants: MotorConstants }
  | {
      readonly ok: false;
      readonly field: keyof Motor;
      readonly problem: string;
      readonly remedy: string;
    };

const radPerSPerRpm = Math.PI / 30;
/** Share of the rated current taken without load where nothing is known. Common practice, no source. */
const noLoadShareOfRated = 0.1;

/**
 * Motor constants from the readings a hobbyist has.
 *
 * Winding: as given, else `R = V/I_stall`, else from the rated point `R = (V - Ke w)/I`.
 * Back EMF: speed per volt, else `Ke = (V - I0 R)/w0` from the no-load reading, else `Ke = (V - I R)/w` from the rated point.
 * No-load current: as given, else from rated power `I0 = I - P/(Ke w)`, else a tenth of the rated current (rated: a tenth of the stall current).
 *
 * @param motor readings; every unknown one is null
 * @returns the constants with the origin of each, or the field that is missing or contradicts the others
 * Assumes: no field weakening, brush drop counted as resistance. Source: derived from the motor equations.
 */
export function fitMotor(motor: Motor): MotorFit {
  const testV = motor.testVoltageV ?? motor.ratedVoltageV;
  const rated = ratedPoint(motor);
  const noLoadRadPerS = motor.noLoadRpm === null ? null : motor.noLoadRpm * radPerSPerRpm;
  const speedConstant = motor.rpmPerVolt === null ? null : 1 / (motor.rpmPerVolt * radPerSPerRpm);

  const givenOhm =
    motor.windingOhm ?? (motor.stallCurrentA === null ? null : testV / motor.stallCurrentA);
  // Brushed motors of this class are rated at about a tenth of their stall current.
  const usualRatedA = motor.ratedCurrentA ?? (givenOhm === null ? 0 : (0.1 * testV) / givenOhm);
  const guessedNoLoadA = motor.noLoadCurrentA ?? usualRatedA * noLoadShareOfRated;

  let resistanceOhm = givenOhm;
  let backEmfVs = speedConstant;
  if (resistanceOhm !== null && backEmfVs === null && noLoadRadPerS !== null) {
    backEmfVs = (testV - guessedNoLoadA * resistanceOhm) / noLoadRadPerS;
  } else if (resistanceOhm !== null && backEmfVs === null && rated !== null) {
    backEmfVs = (rated.voltageV - rated.currentA * resistanceOhm) / rated.radPerS;
  } else if (resistanceOhm === null && backEmfVs !== null && rated !== null) {
    resistanceOhm = (rated.voltageV - backEmfVs * rated.radPerS) / rated.currentA;
  } else if (
    resistanceOhm === null &&
    backEmfVs === null &&
    noLoadRadPerS !== null &&
    rated !== null
  ) {
    // Two equations, V = I0 R + Ke w0 and Vr = Ir R + Ke wr, solved for R.
    const divisor = rated.currentA * noLoadRadPerS - guessedNoLoadA * rated.radPerS;
    resistanceOhm =
      divisor > 0 ? (rated.voltageV * noLoadRadPerS - testV * rated.radPerS) / divisor : 0;
    backEmfVs = (testV - guessedNoLoadA * resistanceOhm) / noLoadRadPerS;
  }

  if (resistanceOhm === null) {
    return missing(
      'windingOhm',
      'the winding resistance cannot be found',
      'Give the winding resistance, the stall current, or the rated current with the rated speed.',
    );
  }
  if (backEmfVs === null) {
    return missing(
      'noLoadRpm',
      'the speed constant cannot be found',
      'Give the speed without load, the speed per volt, or the rated speed with the rated current.',
    );
  }
  if (!(resistanceOhm > 0)) {
    return missing(
      'ratedRpm',
      'the readings contradict each other: the winding resistance would not be above zero',
      'The speed under load must be lower than without load at the same voltage; check both readings.',
    );
  }
  if (!(backEmfVs > 0)) {
    return missing(
      'windingOhm',
      'the readings contradict each other: the winding would drop the whole voltage',
      'Check the winding resistance against the current of the reading.',
    );
  }

  const noLoadCurrentA =
    motor.noLoadCurrentA ?? noLoadFromPower(motor, rated, backEmfVs) ?? guessedNoLoadA;
  const stallA = testV / resistanceOhm;
  if (noLoadCurrentA >= stallA) {
    return missing(
      'noLoadCurrentA',
      `the current without load (${noLoadCurrentA.toPrecision(3)} A) is not below the stall current (${stallA.toPrecision(3)} A)`,
      'Check both readings.',
    );
  }
  return {
    ok: true,
    constants: {
      resistanceOhm,
      backEmfVs,
      noLoadCurrentA,
      resistanceOrigin: motor.windingOhm !== null ? 'given' : 'derived',
      backEmfOrigin: motor.rpmPerVolt !== null ? 'given' : 'derived',
      noLoadOrigin:
        motor.noLoadCurrentA !== null
          ? 'given'
          : noLoadFromPower(motor, rated, backEmfVs) === null
            ? 'assumed'
            : 'derived',
    },
  };
}

interface RatedPoint {
  readonly voltageV: number;
  readonly currentA: number;
  readonly radPerS: number;
}

function ratedPoint(motor: Motor): RatedPoint | null {
  if (motor.ratedCurrentA === null || motor.ratedRpm === null) return null;
  return {
    voltageV: motor.ratedVoltageV,
    currentA: motor.ratedCurrentA,
    radPerS: motor.ratedRpm * radPerSPerRpm,
  };
}

function noLoadFromPower(motor: Motor, rated: RatedPoint | null, backEmfVs: number): number | null {
  if (rated === null || motor.ratedPowerW === null) return null;
  const share = rated.currentA - motor.ratedPowerW / (backEmfVs * rated.radPerS);
  return share > 0 && share < rated.currentA ? share : null;
}

function missing(field: keyof Motor, problem: string, remedy: string): MotorFit {
  return { ok: false, field, problem, remedy };
}
