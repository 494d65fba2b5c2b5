import { expect, test } from 'vitest';
import { outingSource } from '#core/drive/outing-source.ts';
import type { Controller } from '#core/plan/schema/controller.ts';
import type { BenchRow } from '../support/drive-bench.ts';
import { runOnSupply } from '../support/drive-bench.ts';
import {
  bareControl,
  bareController,
  bareDrive,
  bareMachine,
  driveLeg,
  driveLoad,
  driveOuting,
} from '../support/drive-plan.ts';
import { columnAt, findNgspice, runTransient } from '../support/ngspice.ts';

/**
 * The motor as its mechanical analogue: in volts and amperes at the motor's terminals a turning mass is a capacitor
 * `m/(eta k^2)`, a friction torque a current. Every figure of the deck is worked out here from the plan's figures,
 * not taken from the model under test. Class of the reference: recomputed by an independent tool (ngspice).
 */
const ngspice = findNgspice();

const supplyV = 25.4;
const supplyOhm = 0.03;
const packKg = 15;
/** Heavy enough that the wheels hold the start: grip 0.7 m g above the push of a held shaft. */
const machineKg = 170;
const massKg = machineKg + 70 + packKg;
const gearEfficiency = 0.85;
/** V per m/s: 0.08 V s/rad, ratio 16, wheel 0.13 m. */
const k = (0.08 * 16) / 0.13;
const windingOhm = 0.1;
/** Worn paving 0.02 on the level; the deck has no air drag, so the plan has none. */
const rollingN = massKg * 9.80665 * 0.02;
const loadA = rollingN / (gearEfficiency * k) + 1.5;
const capacitanceF = (massKg * 1.05) / (gearEfficiency * k * k);

const drive = bareDrive({
  masses: { machineKg, riderKg: 70, payloadKg: 0, rotatingPercent: 5 },
  wheel: { diameterMm: 260, drivenSharePercent: 100, grip: 'rubber', dragAreaM2: 0 },
});

function modelRun(controller: Controller, seconds: number) {
  const built = outingSource(
    bareMachine({ drive }),
    controller,
    driveOuting([driveLeg(driveLoad())]),
    packKg,
    supplyV,
  );
  if (!built.ok) throw new Error(built.problem);
  const rows = runOnSupply(built.source, supplyV, supplyOhm, seconds);
  return { rows, result: built.source.result()! };
}

const at = (rows: readonly BenchRow[], timeS: number, read: (row: BenchRow) => number) =>
  columnAt(
    rows.map((row) => [row.timeS, read(row)]),
    1,
    timeS,
  );

/** Motor with its load: nodes `motor` (terminal) and `emf` (speed in volts). The load acts only once it turns. */
const motorElements = `Rw motor emf ${windingOhm}
Cm emf 0 ${capacitanceF} ic=0
Bload emf 0 I = ${loadA}*min(1, v(emf)*1e4)
.options reltol=1e-6 abstol=1e-9`;

test.skipIf(ngspice === null)(
  'a step start through a plain switch follows the circuit simulator within 0.5 %',
  () => {
    const { rows, result } = modelRun(
      bareController({
        batteryCurrentLimitA: null,
        motorCurrentLimitA: null,
        control: bareControl({ kind: 'switch', efficiencyPercent: 100 }),
      }),
      3,
    );
    const spice = runTransient(
      `V1 e 0 ${supplyV}
Rs e motor ${supplyOhm}
${motorElements}`,
      '1e-4 3 0 5e-4 uic',
      ['i(V1)', 'v(motor)', 'v(emf)'],
    );
    const peakA = -spice[1]![1]!;
    // Held shaft: E/(Rs + Rw) = 195.4 A, before the first movement.
    expect(peakA).toBeCloseTo(supplyV / (supplyOhm + windingOhm), 0);
    expect(Math.abs(result.motorPeakA / peakA - 1)).toBeLessThan(0.005);
    for (const timeS of [0.02, 0.05, 0.1, 0.2, 0.4, 0.8, 1.5]) {
      const reference = -columnAt(spice, 1, timeS);
      expect(
        Math.abs(at(rows, timeS, (row) => row.currentA) - reference),
        `current at ${timeS} s`,
      ).toBeLessThan(0.005 * peakA);
      expect(
        Math.abs(at(rows, timeS, (row) => row.busV) / columnAt(spice, 2, timeS) - 1),
        `voltage at ${timeS} s`,
      ).toBeLessThan(0.005);
    }
    const speeds = Array.from(
      result.series.timeS,
      (timeS, row) => [timeS, result.series.speedKmh[row]!] as const,
    );
    for (const timeS of [0.1, 0.3, 0.6, 1, 2, 2.9]) {
      const referenceKmh = (columnAt(spice, 3, timeS) / k) * 3.6;
      expect(
        Math.abs(columnAt(speeds, 1, timeS) / referenceKmh - 1),
        `speed at ${timeS} s`,
      ).toBeLessThan(0.005);
    }
  },
);

test.skipIf(ngspice === null)(
  'a ramped start against both current limits follows the circuit simulator within 0.5 %',
  () => {
    const { rows, result } = modelRun(
      bareController({
        batteryCurrentLimitA: 45,
        motorCurrentLimitA: 70,
        control: bareControl({ rampUpS: 0.5 }),
      }),
      4,
    );
    // A chopper with duty d(t), motor limit 70 A and battery limit 45 A at 96 %: the motor current is the least of three.
    const spice = runTransient(
      `V1 e 0 ${supplyV}
Rs e bus ${supplyOhm}
Bd duty 0 V = min(1, time/0.5)
Blim lim 0 V = min(70, (-v(emf) + sqrt(v(emf)*v(emf) + 4*${windingOhm}*0.96*45*v(bus)))/(2*${windingOhm}))
Bi im 0 V = max(0, min(v(lim), (v(duty)*v(bus) - v(emf))/${windingOhm}))
Bm 0 emf I = v(im)
Bbus bus 0 I = v(im)*(v(im)*${windingOhm} + v(emf))/(0.96*max(1, v(bus)))
Cm emf 0 ${capacitanceF} ic=0
Bload emf 0 I = ${loadA}*min(1, v(emf)*1e4)
Rx duty 0 1k
.options reltol=1e-5 abstol=1e-8`,
      '1e-3 4 0 1e-3 uic',
      ['v(im)', 'v(bus)', 'v(emf)', 'i(V1)'],
    );
    const peakMotorA = Math.max(...spice.map((row) => row[1]!));
    const peakBatteryA = Math.max(...spice.map((row) => -row[4]!));
    expect(peakMotorA).toBeGreaterThan(60);
    expect(Math.abs(result.motorPeakA / peakMotorA - 1)).toBeLessThan(0.005);
    expect(Math.abs(result.batteryPeakA / peakBatteryA - 1)).toBeLessThan(0.005);
    for (const timeS of [0.2, 0.4, 0.6, 0.8, 1, 1.3, 1.7, 2.2, 3]) {
      expect(
        Math.abs(at(rows, timeS, (row) => row.currentA) + columnAt(spice, 4, timeS)),
        `current at ${timeS} s`,
      ).toBeLessThan(0.005 * peakBatteryA);
      expect(
        Math.abs(at(rows, timeS, (row) => row.busV) / columnAt(spice, 2, timeS) - 1),
        `voltage at ${timeS} s`,
      ).toBeLessThan(0.005);
    }
    const speeds = Array.from(
      result.series.timeS,
      (timeS, row) => [timeS, result.series.speedKmh[row]!] as const,
    );
    for (const timeS of [0.8, 1.2, 2, 3.5]) {
      const referenceKmh = (columnAt(spice, 3, timeS) / k) * 3.6;
      expect(
        Math.abs(columnAt(speeds, 1, timeS) / referenceKmh - 1),
        `speed at ${timeS} s`,
      ).toBeLessThan(0.005);
    }
  },
);
