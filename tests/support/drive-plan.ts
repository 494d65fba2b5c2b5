import type { MotorControl } from '#core/plan/schema/motor-control.ts';
import type { Controller } from '#core/plan/schema/controller.ts';
import type { Drive } from '#core/plan/schema/drive.ts';
import type { DriveLoad } from '#core/plan/schema/leg-load.ts';
import type { Machine } from '#core/plan/schema/machine.ts';
import type { Motor } from '#core/plan/schema/motor.ts';
import type { Leg, Outing } from '#core/plan/schema/outing.ts';

/** A motor with winding and speed constant known: 24 V, 0.1 Ω, 0.08 V s/rad. */
export function bareMotor(changes: Partial<Motor> = {}): Motor {
  return {
    name: 'Test motor',
    ratedVoltageV: 24,
    testVoltageV: null,
    noLoadRpm: null,
    noLoadCurrentA: 1.5,
    rpmPerVolt: 30 / Math.PI / 0.08,
    windingOhm: 0.1,
    stallCurrentA: null,
    ratedCurrentA: null,
    ratedRpm: null,
    ratedPowerW: null,
    heatResistanceKPerW: null,
    heatTimeS: null,
    maximumTemperatureC: null,
    maximumCurrentA: null,
    massKg: null,
    partId: null,
    ...changes,
  };
}

export function bareDrive(changes: Partial<Drive> = {}): Drive {
  return {
    masses: { machineKg: 60, riderKg: 70, payloadKg: 0, rotatingPercent: 5 },
    wheel: { diameterMm: 260, drivenSharePercent: 60, grip: 'rubber', dragAreaM2: 0.5 },
    motor: bareMotor(),
    motorCount: 1,
    gears: [
      {
        id: 'only',
        name: 'Only',
        ratio: 16,
        efficiencyPercent: 85,
        motorsInSeries: 1,
        direction: 'forward',
        highestDutyPercent: 100,
      },
    ],
    brakes: {
      onRelease: 'coast',
      resistor: null,
      regenerationLimitA: null,
      serviceDecelerationMps2: 2,
      parking: 'manual',
    },
    stopChain: {
      isolator: 'switch',
      isolatorReachable: 'yes',
      isolatorDcVoltageV: 48,
      isolatorBreakingA: 500,
      throttleFaultDetection: 'yes',
      startInterlock: 'yes',
    },
    speedLimitKmh: 12,
    steepestGradePercent: 8,
    steepestSurface: 'worn-paving',
    resistancePercent: 100,
    scaledTo: null,
    ...changes,
  };
}

export function bareControl(changes: Partial<MotorControl> = {}): MotorControl {
  return {
    kind: 'pwm',
    rampUpS: 0.8,
    rampDownS: 0.3,
    efficiencyPercent: 96,
    reducesBelowV: null,
    reducedCurrentPercent: 50,
    throttle: { pedalRestV: 0.8, pedalFullV: 4.2, startV: 1, fullV: 4, exponent: 1 },
    ...changes,
  };
}

export function bareController(changes: Partial<Controller> = {}): Controller {
  return {
    name: 'Test controller',
    minimumVoltageV: 18,
    maximumVoltageV: 60,
    cutoffVoltageV: 20,
    restartVoltageV: 22,
    cutoffDelayS: 1,
    batteryCurrentLimitA: 60,
    motorCurrentLimitA: 90,
    idleCurrentA: 0.05,
    control: bareControl(),
    ...changes,
  };
}

export function bareMachine(changes: Partial<Machine> = {}): Machine {
  return {
    name: 'Test machine',
    note: '',
    controller: bareController(),
    harnessResistanceOhm: 0.008,
    converter: null,
    accessories: [],
    bay: { lengthMm: null, widthMm: null, heightMm: null, massLimitKg: null },
    drive: bareDrive(),
    ...changes,
  };
}

export function driveLoad(changes: Partial<DriveLoad> = {}): DriveLoad {
  return {
    kind: 'drive',
    surface: 'worn-paving',
    gradePercent: 0,
    gearId: null,
    command: { kind: 'throttle', throttlePercent: 100 },
    distanceM: null,
    starts: 1,
    haltS: 0,
    loadPercent: 100,
    headwindKmh: 0,
    ...changes,
  };
}

export function driveLeg(load: Leg['load'], durationMin = 1, id = 'leg'): Leg {
  return { id, name: id, durationMin, load, otherLoads: [] };
}

export function driveOuting(legs: readonly Leg[], changes: Partial<Outing> = {}): Outing {
  return {
    id: 'outing',
    name: 'Outing',
    goalMin: 30,
    ambientC: 20,
    legs: [...legs],
    longestMin: 120,
    restAfterMin: 0,
    ...changes,
  };
}
