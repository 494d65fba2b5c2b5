import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Wiring } from '../plan/schema/wiring.ts';
import type { RunResult } from '../run/result.ts';
import { motorCircuitOhm } from './motor-circuit.ts';
import { motorCurrents } from './motor-currents.ts';
import type { Supply } from './supply.ts';

/** Currents of the motor circuit in one state: at the controller's input and at its output [A]. */
export interface MotorDemand {
  readonly batteryA: number;
  readonly motorA: number;
}

/** Everything the wiring has to carry, before the network is solved. */
export interface WiringDemand {
  /** Root mean square while driving. */
  readonly cruising: MotorDemand;
  readonly start: MotorDemand;
  /** Motors held fast, controller within its limits; null where neither limits nor winding are known. */
  readonly stall: MotorDemand | null;
  /** Winding of the motors as joined [Ω]; null when unknown. */
  readonly motorOhm: number | null;
  /** Motors held fast and the controller failed shorted: only resistance limits [A]; null when the winding is unknown. */
  readonly runawayA: number | null;
  /** Largest current in the brake resistor [A]; 0 where the outing brakes otherwise. */
  readonly brakeA: number;
  /** Limit of the controller on the battery side [A]; null when unknown. */
  readonly batteryLimitA: number | null;
  readonly controllerIdleA: number;
  readonly chargeA: number | null;
  /** True when the motor-side current is only known to be at least the battery-side one. */
  readonly motorSideIsFloor: boolean;
}

/**
 * What the plan, the run and the controller's limits say about currents.
 *
 * Start: the controller's battery limit, else the peak of the run. Stall under PWM: the motor draws its limit or `V/R`,
 * and the battery gives `I^2 R / V` (derived), within its own limit.
 */
export function wiringDemand(
  machine: Machine,
  option: Option,
  wiring: Pick<Wiring, 'devices'>,
  run: RunResult,
  supply: Supply,
): WiringDemand {
  const controller = option.controller ?? machine.controller;
  const { rmsA, peakA } = motorCurrents(run.series);
  const motorOhm = motorCircuitOhm(machine, wiring);
  const batteryLimitA = controller.batteryCurrentLimitA;
  const motorLimitA = controller.motorCurrentLimitA;
  const startBatteryA = batteryLimitA ?? peakA;
  const startMotorA = Math.max(startBatteryA, motorLimitA ?? run.drive?.motorPeakA ?? 0);
  const cruisingMotorA = Math.max(rmsA, run.drive?.motorRmsA ?? 0);
  const sourceOhm =
    (supply.stringOhm + supply.linkOhm) / supply.stringCount + machine.harnessResistanceOhm;
  return {
    cruising: { batteryA: rmsA, motorA: cruisingMotorA },
    start: { batteryA: startBatteryA, motorA: startMotorA },
    stall: stallDemand(supply.fullV, sourceOhm, motorOhm, batteryLimitA, motorLimitA),
    motorOhm,
    runawayA: motorOhm === null ? null : supply.fullV / (sourceOhm + motorOhm),
    brakeA: run.drive?.brakePeakA ?? 0,
    batteryLimitA,
    controllerIdleA: controller.idleCurrentA,
    chargeA: option.charger?.currentA ?? null,
    motorSideIsFloor: motorLimitA === null && run.drive === null,
  };
}

function stallDemand(
  fullV: number,
  sourceOhm: number,
  motorOhm: number | null,
  batteryLimitA: number | null,
  motorLimitA: number | null,
): MotorDemand | null {
  if (motorOhm === null) {
    const known = motorLimitA ?? batteryLimitA;
    return known === null ? null : { batteryA: batteryLimitA ?? known, motorA: known };
  }
  const motorA = Math.min(motorLimitA ?? Infinity, fullV / (motorOhm + sourceOhm));
  const busV = fullV - motorA * sourceOhm;
  const asked = Math.min(motorA, (motorA ** 2 * motorOhm) / Math.max(busV, 0.1 * fullV));
  if (batteryLimitA === null || asked <= batteryLimitA) return { batteryA: asked, motorA };
  // The battery limit holds the duty down: I_m = sqrt(I_b V / R).
  const heldV = fullV - batteryLimitA * sourceOhm;
  return {
    batteryA: batteryLimitA,
    motorA: Math.max(batteryLimitA, Math.sqrt((batteryLimitA * heldV) / motorOhm)),
  };
}
