import { expect, test } from 'vitest';
import { checkAgainst } from '../support/check-against.ts';
import { buildBlockModel, newBlockConditions } from '#core/battery/build-block-model.ts';
import { readUniform } from '#core/battery/uniform-table.ts';
import { outingSource } from '#core/drive/outing-source.ts';
import { libraryBlock } from '#core/library/index.ts';
import { newOption, newPack } from '#core/plan/defaults.ts';
import { runOuting } from '#core/run/run-outing.ts';
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

/** Writes the largest difference over a start down for the report, as a share of the reference's peak. */
function within(quantity: string, peak: number, differences: readonly number[]): void {
  checkAgainst({
    chapter: 'Drive',
    quantity,
    unit: '% of peak',
    source: 'ngspice (circuit simulator), turning mass as a capacitor, friction as a current',
    class: 'tool',
    reference: 0,
    ours: (100 * Math.max(...differences.map(Math.abs))) / peak,
    within: { absolute: 0.5 },
  });
}

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
    const moments = [0.02, 0.05, 0.1, 0.2, 0.4, 0.8, 1.5];
    within(
      'Step start, current over the start, largest difference',
      peakA,
      moments.map((timeS) => at(rows, timeS, (row) => row.currentA) + columnAt(spice, 1, timeS)),
    );
    for (const timeS of moments) {
      expect(
        Math.abs(at(rows, timeS, (row) => row.busV) / columnAt(spice, 2, timeS) - 1),
        `voltage at ${timeS} s`,
      ).toBeLessThan(0.005);
    }
    const speeds = Array.from(
      result.series.timeS,
      (timeS, row) => [timeS, result.series.speedKmh[row]!] as const,
    );
    const speedMoments = [0.1, 0.3, 0.6, 1, 2, 2.9];
    within(
      'Step start, speed over the start, largest difference',
      (3.6 * columnAt(spice, 3, 2.9)) / k,
      speedMoments.map(
        (timeS) => columnAt(speeds, 1, timeS) - (3.6 * columnAt(spice, 3, timeS)) / k,
      ),
    );
    for (const timeS of speedMoments) {
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
    const moments = [0.2, 0.4, 0.6, 0.8, 1, 1.3, 1.7, 2.2, 3];
    within(
      'Ramped start at both limits, pack current, largest difference',
      peakBatteryA,
      moments.map((timeS) => at(rows, timeS, (row) => row.currentA) + columnAt(spice, 4, timeS)),
    );
    for (const timeS of moments) {
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

test.skipIf(ngspice === null)(
  'the same step start on two lead blocks, run by the engine of every run, follows the circuit simulator within 0.5 %',
  () => {
    const block = { ...libraryBlock('agm-12v-100ah'), massKg: packKg / 2 };
    const option = newOption([], { ...newPack(block, 2), linkResistanceOhm: 0.002 }, 'pair');
    const machine = bareMachine({
      drive,
      harnessResistanceOhm: 0.008,
      controller: bareController({
        batteryCurrentLimitA: null,
        motorCurrentLimitA: null,
        idleCurrentA: 0,
        cutoffVoltageV: null,
        control: bareControl({ kind: 'switch', efficiencyPercent: 100 }),
      }),
    });
    const run = runOuting(option, machine, driveOuting([driveLeg(driveLoad())], { longestMin: 1 }));
    // Two blocks in series with their polarisation, links and cable; three seconds take a thousandth of the charge.
    const model = buildBlockModel(block, { ...newBlockConditions, temperatureC: 20 });
    const emfV = 2 * readUniform(model.openCircuit, 1);
    const ohm = 2 * model.resistanceOhm + 0.002 + 0.008;
    const spice = runTransient(
      `V1 e 0 ${emfV}
R1 e p ${2 * model.polarisationOhm}
C1 e p ${model.polarisationS / (2 * model.polarisationOhm)} ic=0
Rs p motor ${ohm}
${motorElements}`,
      '1e-4 3 0 5e-4 uic',
      ['i(V1)', 'v(motor)', 'v(emf)'],
    );
    const peakA = -spice[1]![1]!;
    const { timeS, packCurrentA } = run.series;
    // A row at the end of a step holds the current of the step, which is that of its middle.
    const currents: (readonly [number, number])[] = [];
    for (let row = 1; row < timeS.length; row += 1)
      if (timeS[row]! > timeS[row - 1]!)
        currents.push([(timeS[row]! + timeS[row - 1]!) / 2, packCurrentA[row]!]);
    const moments = [0.05, 0.1, 0.2, 0.4, 0.8, 1.5, 2.5];
    within(
      'Step start on a lead pack, current, largest difference',
      peakA,
      moments.map((time) => columnAt(currents, 1, time) + columnAt(spice, 1, time)),
    );
    const { series } = run.drive!;
    const speeds = Array.from(series.timeS, (time, row) => [time, series.speedKmh[row]!] as const);
    within(
      'Step start on a lead pack, speed, largest difference',
      (3.6 * columnAt(spice, 3, 2.9)) / k,
      moments.map((time) => columnAt(speeds, 1, time) - (3.6 * columnAt(spice, 3, time)) / k),
    );
  },
);
