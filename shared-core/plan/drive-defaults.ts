import type { Brakes, BrakeResistor } from './schema/braking.ts';
import type { Drive, Gear } from './schema/drive.ts';
import type { DriveLoad } from './schema/leg-load.ts';
import type { MotorControl } from './schema/motor-control.ts';
import type { Motor } from './schema/motor.ts';
import type { StopChain } from './schema/stop-chain.ts';

/** A 24 V brushed motor of the 250 W class as the trade sells it: invented, within usual figures. */
export function newMotor(): Motor {
  return {
    name: 'Brushed motor 24 V, 250 W',
    ratedVoltageV: 24,
    testVoltageV: null,
    noLoadRpm: 3000,
    noLoadCurrentA: 1.8,
    rpmPerVolt: null,
    windingOhm: null,
    stallCurrentA: null,
    ratedCurrentA: 14,
    ratedRpm: 2650,
    ratedPowerW: 250,
    heatResistanceKPerW: null,
    heatTimeS: null,
    maximumTemperatureC: null,
    maximumCurrentA: null,
    massKg: null,
    partId: null,
  };
}

export function newMotorControl(): MotorControl {
  return {
    kind: 'pwm',
    rampUpS: null,
    rampDownS: null,
    efficiencyPercent: null,
    reducesBelowV: null,
    reducedCurrentPercent: 50,
    throttle: { pedalRestV: 0.8, pedalFullV: 4.2, startV: 1.1, fullV: 4, exponent: 1 },
  };
}

export function newBrakeResistor(): BrakeResistor {
  return {
    resistanceOhm: 0.5,
    ratedPowerW: 50,
    overloadFactor: 5,
    pulseEnergyJ: null,
    heatTimeS: null,
    riseAtRatedK: null,
  };
}

export function newBrakes(): Brakes {
  return {
    onRelease: 'coast',
    resistor: null,
    regenerationLimitA: null,
    serviceDecelerationMps2: 2,
    parking: 'manual',
  };
}

/** Nothing known: the findings then ask. */
export function newStopChain(): StopChain {
  return {
    isolator: 'unknown',
    isolatorReachable: 'unknown',
    isolatorDcVoltageV: null,
    isolatorBreakingA: null,
    throttleFaultDetection: 'unknown',
    startInterlock: 'unknown',
  };
}

export function newGear(id = 'gear', name = 'Gear'): Gear {
  return {
    id,
    name,
    ratio: 16,
    efficiencyPercent: 85,
    motorsInSeries: 1,
    direction: 'forward',
    highestDutyPercent: 100,
  };
}

export function newDrive(): Drive {
  return {
    masses: { machineKg: 60, riderKg: 75, payloadKg: 0, rotatingPercent: 5 },
    wheel: { diameterMm: 260, drivenSharePercent: 60, grip: 'rubber', dragAreaM2: null },
    motor: newMotor(),
    motorCount: 1,
    gears: [newGear()],
    brakes: newBrakes(),
    stopChain: newStopChain(),
    speedLimitKmh: null,
    steepestGradePercent: null,
    steepestSurface: 'worn-paving',
    resistancePercent: 100,
    scaledTo: null,
  };
}

export function newDriveLoad(): DriveLoad {
  return {
    kind: 'drive',
    surface: 'worn-paving',
    gradePercent: 0,
    gearId: null,
    command: { kind: 'speed', targetSpeedKmh: 5 },
    distanceM: null,
    starts: 1,
    haltS: 5,
    loadPercent: 100,
    headwindKmh: 0,
  };
}
