import { describe, expect, test } from 'vitest';
import { driveTrain } from '#core/drive/drive-train.ts';
import type { DriveTrain } from '#core/drive/drive-train.ts';
import { descent } from '#core/drive/resistor-heat.ts';
import { roadForceN, roadOf } from '#core/drive/road.ts';
import { outingSource } from '#core/drive/outing-source.ts';
import { drivePoint, steadyPoint } from '#core/drive/steady-point.ts';
import { stopping } from '#core/drive/stopping.ts';
import type { Drive } from '#core/plan/schema/drive.ts';
import {
  bareControl,
  bareController,
  bareDrive,
  bareMachine,
  bareMotor,
  driveLeg,
  driveLoad,
  driveOuting,
} from '../support/drive-plan.ts';
import { checkAgainst } from '../support/check-against.ts';
import { runOnSupply } from '../support/drive-bench.ts';

const textbook = 'Textbook companion: 120 V at 6000 rpm, 60 V, 2.5 Ω, 0.5 N·m; figures recomputed';
const road60 =
  'Rolling coefficients of Marks and Carvill, m g (Crr cos a + sin a), g 9.80665; recomputed';
const braking =
  'E/(Ra+Rb), m v²/2, v tau, m g sin a (Ra+Rb)/k² for 10 V, 0.25 + 0.5 Ω, 60 kg, 1.6 m/s; recomputed';
const held = (
  quantity: string,
  unit: string,
  source: string,
  reference: number,
  ours: number,
  share = 5e-4,
): void =>
  checkAgainst({
    chapter: 'Drive',
    quantity,
    unit,
    source,
    class: 'recomputed',
    reference,
    ours,
    within: { share },
  });

/** Ideal controller: no loss, no limits, no ramp. */
const controller = bareController({
  batteryCurrentLimitA: null,
  motorCurrentLimitA: null,
  idleCurrentA: 0,
  control: bareControl({ kind: 'switch', efficiencyPercent: 100 }),
});

function trainOf(drive: Drive): DriveTrain {
  const built = driveTrain(drive, controller, 0);
  if (!built.ok) throw new Error(built.problem);
  return built.train;
}

/** Wheel of 2 m and ratio 1: the speed of the tread in m/s is that of the shaft in rad/s, newtons are newton metres. */
const direct = { ratio: 1, diameterMm: 2000 } as const;

function directDrive(
  massKg: number,
  motor: Parameters<typeof bareMotor>[0],
  changes: Partial<Drive> = {},
): Drive {
  return bareDrive({
    masses: { machineKg: massKg, riderKg: 0, payloadKg: 0, rotatingPercent: 0 },
    wheel: {
      diameterMm: direct.diameterMm,
      drivenSharePercent: 100,
      grip: 'rubber',
      dragAreaM2: 0,
    },
    motor: bareMotor({ noLoadCurrentA: 0, ...motor }),
    gears: [
      {
        id: 'only',
        name: 'Only',
        ratio: direct.ratio,
        efficiencyPercent: 100,
        motorsInSeries: 1,
        direction: 'forward',
        highestDutyPercent: 100,
      },
    ],
    ...changes,
  });
}

describe('the textbook motor through the drive', () => {
  // Ke from 120 V at 6000 rpm; 60 V, 2.5 Ω, 0.5 N·m -> 2.618 A, 2672.75 rpm. Inputs published (textbook companion), figures recomputed.
  const drive = directDrive(1000, { ratedVoltageV: 120, rpmPerVolt: 50, windingOhm: 2.5 });
  const train = trainOf(drive);
  // A road whose resistance is the torque at the shaft: 0.5 N at the tread of a 1 m radius.
  const road = { ...roadOf(train, 'asphalt', 0, 0), rollingN: 0.5 };

  test('settles at 2.618 A and 2672.75 rpm at 60 V', () => {
    const point = steadyPoint(train, train.gears[0]!, road, { emfV: 60, resistanceOhm: 0 }, 1)!;
    held('Textbook motor, current', 'A', textbook, 2.618, point.motorA);
    held('Textbook motor, speed', 'rpm', textbook, 2672.75, (point.speedMps * 30) / Math.PI, 1e-4);
  });

  test('settles there from half the duty at twice the voltage as well, drawing half the current from the pack', () => {
    const point = steadyPoint(train, train.gears[0]!, road, { emfV: 120, resistanceOhm: 0 }, 0.5)!;
    expect(point.motorA).toBeCloseTo(2.618, 3);
    expect(point.batteryA).toBeCloseTo(2.618 / 2, 3);
  });

  test('stalls at V/R and turns fastest without load', () => {
    expect(
      drivePoint(
        train,
        train.gears[0]!,
        { ...road, gripN: Infinity },
        { emfV: 60, resistanceOhm: 0 },
        1,
        0,
      )!.motorA,
    ).toBeCloseTo(24, 9);
    const free = steadyPoint(
      train,
      train.gears[0]!,
      { ...road, rollingN: 0 },
      { emfV: 60, resistanceOhm: 0 },
      1,
    )!;
    expect((free.speedMps * 30) / Math.PI).toBeCloseTo(3000, 3);
  });
});

describe('road figures through the drive', () => {
  // 60 kg, 1.4 m/s: Crr 0.06 level -> 35.304 N, 49.43 W; Crr 0.02, 10 % -> 70.257 N, 98.36 W. Recomputed, g 9.80665.
  const train = trainOf(directDrive(60, {}));
  test.each([
    ['short-grass', 0, 35.304, 49.43],
    ['worn-paving', 10, 70.257, 98.36],
  ] as const)('%s at %d %% asks for %d N and %d W', (surface, grade, newtons, watts) => {
    const force = roadForceN(roadOf(train, surface, grade, 0), 1.4);
    held(`Push, 60 kg, ${surface}, ${grade} %`, 'N', road60, newtons, force, 1e-4);
    held(`Power at 1.4 m/s, ${surface}, ${grade} %`, 'W', road60, watts, force * 1.4, 2e-4);
  });
});

describe('the braking example through the drive', () => {
  // 10 V at 1.6 m/s (k = 6.25 V s/m), Ra 0.25, Rb 0.5 Ω, 60 kg: 13.333 A, 88.89 W in Rb, 76.8 J of motion, tau 1.152 s,
  // 1.843 m; 10 % slope: 1.1241 m/s. Recomputed. No rolling resistance and no friction in the example.
  const drive = directDrive(
    60,
    { rpmPerVolt: 30 / Math.PI / 6.25, windingOhm: 0.25 },
    {
      brakes: {
        ...bareDrive().brakes,
        onRelease: 'resistor',
        resistor: {
          resistanceOhm: 0.5,
          ratedPowerW: 50,
          overloadFactor: 5,
          pulseEnergyJ: null,
          heatTimeS: null,
          riseAtRatedK: null,
        },
      },
    },
  );
  const train = trainOf(drive);
  const gear = train.gears[0]!;
  const level = { ...roadOf(train, 'asphalt', 0, 0), rollingN: 0 };
  const stop = stopping(train, gear, level, 1.6, 24);

  test('peak current, power, energy and share agree', () => {
    held('Braking, peak current', 'A', braking, 13.333, stop.peakMotorA);
    held('Braking, peak in the resistor', 'W', braking, 88.89, stop.resistorPeakW);
    held('Braking, energy of motion', 'J', braking, 76.8, stop.motionJ, 1e-9);
    held('Braking, energy in the resistor', 'J', braking, 51.2, stop.resistorJ, 2e-3);
    held('Braking, first deceleration', 'm/s²', braking, 1.6 / 1.152, stop.decelerationMps2);
    expect(stop.resistorJ / (stop.resistorJ + stop.windingJ)).toBeCloseTo(0.5 / 0.75, 6);
    expect(stop.decelerationMps2).toBeCloseTo(1.6 / 1.152, 4);
  });

  test('it comes to within a thirty-second of the speed after the way v tau (1 - 1/32)', () => {
    // Standing counts from 0.05 m/s: the way there is v tau (1 - 0.05/1.6) = 1.843 m x 0.96875, in tau ln 32.
    held('Braking, way down to 0.05 m/s', 'm', braking, 1.8432 * 0.96875, stop.distanceM!, 5e-3);
    held('Braking, time down to 0.05 m/s', 's', braking, 1.152 * Math.log(32), stop.timeS!, 5e-3);
  });

  test('down 10 % it creeps at 1.1241 m/s, by the balance and by the simulation', () => {
    const down = { ...roadOf(train, 'asphalt', -10, 0), rollingN: 0 };
    const { creepMps } = stopping(train, gear, down, 1.6, 24);
    held('Creep down 10 %, balance', 'm/s', braking, 1.1241, descent(gear, down, 0.5).creepMps);
    held('Creep down 10 %, simulated', 'm/s', braking, 1.1241, creepMps);
  });
});

test('winding heat of a held load rises by 15.739 K', () => {
  // 20 W, 2 K/W, tau 600 s, 300 s -> 15.739 K. Recomputed. 20 W: 10 A through 0.2 Ω of a held shaft.
  const drive = directDrive(1e3, {
    rpmPerVolt: 30 / Math.PI / 0.1,
    windingOhm: 0.2,
    heatResistanceKPerW: 2,
    heatTimeS: 600,
  });
  const machine = bareMachine({
    drive: { ...drive, masses: { ...drive.masses, machineKg: 4000 } },
  });
  const source = outingSource(
    machine,
    bareController({
      motorCurrentLimitA: 10,
      batteryCurrentLimitA: null,
      control: bareControl({ kind: 'switch', efficiencyPercent: 100 }),
    }),
    driveOuting([driveLeg(driveLoad({ gradePercent: 30 }), 5)]),
    0,
    24,
  );
  if (!source.ok) throw new Error(source.problem);
  runOnSupply(source.source, 24, 0.01, 300);
  const result = source.source.result()!;
  expect(result.stalledS).toBeCloseTo(300, 0);
  // The winding's resistance rises with its heat, which the example leaves out: 0.393 % a kelvin, below 7 % of the rise here.
  expect(result.motorEndTemperatureC! - 20).toBeGreaterThan(15.739);
  expect(result.motorEndTemperatureC! - 20).toBeLessThan(15.739 * 1.07);
});
