import { expect, test } from 'vitest';
import { electricalUnit } from '#core/charge/charge-pack.ts';
import type { ChargeUnit } from '#core/charge/charge-unit.ts';
import { simulateCharge, usualWishes } from '#core/charge/simulate-charge.ts';
import { buildBlockModel, newBlockConditions } from '#core/battery/index.ts';
import { newBlock } from '#core/plan/defaults.ts';
import { packOf, plainProgram, plainUnit } from '../support/charge-unit.ts';
import { columnAt, findNgspice, runTransient } from '../support/ngspice.ts';

const ngspice = findNgspice();

/** A current-limited voltage source: the limit gives way within the last millivolts below the end voltage. */
const chargerElement = (node: string, currentA: number, endV: number) =>
  `Bcharger 0 ${node} I = ${currentA} / (1 + exp(min(60, 4000 * (v(${node}) - ${endV}))))
Ccharger ${node} 0 1e-3 ic=0
.options method=gear abstol=1e-9`;

/** The unit equations as a circuit: plates, side current and polarisation between two nodes, charge as a node voltage. */
function unitElements(name: string, unit: ChargeUnit, high: string, low: string): string {
  const { values } = unit.openCircuit;
  const points = Array.from({ length: 41 }, (_, index) => index / 40);
  const table = points.map((x) => `${x},${values[Math.round(x * (values.length - 1))]}`).join(', ');
  const volts = `(v(${high})-v(${low}))`;
  const gas =
    unit.gassing === null
      ? '0'
      : `${unit.gassing.currentA}*exp(${unit.gassing.perVolt}*(${volts}-${unit.gassing.referenceV}))`;
  const plates = `(${volts} - pwl(v(s${name}), ${table}) - v(p${name}))/(${unit.resistanceOhm} + ${unit.acceptanceOhm}/(${1 + unit.acceptanceRoom} - v(s${name})))`;
  return `B${name}a ${high} ${low} I = ${plates} + ${gas}
B${name}b 0 s${name} I = (${plates})/${unit.capacityAh * 3600}
Cs${name} s${name} 0 1 ic=${unit.startShare}
Rs${name} s${name} 0 1e12
B${name}c 0 p${name} I = ${plates} + ${gas}
Cp${name} p${name} 0 ${unit.polarisationS / unit.polarisationOhm} ic=0
Rp${name} p${name} 0 ${unit.polarisationOhm}`;
}

test.skipIf(ngspice === null)(
  'a linear block charges as the circuit simulator says, within 1 mV and 1 mA',
  () => {
    const rows = runTransient(
      `${chargerElement('n', 1.2, 12.6)}\nRb n c 0.08\nCb c 0 43200 ic=11.8\n`,
      '5 33000 0 20 uic',
      ['v(n)', 'v(c)'],
    );
    const { series } = simulateCharge(packOf(plainUnit()), plainProgram());
    for (let index = 5; index < series.timeH.length; index += 7) {
      const at = series.timeH[index]! * 3600;
      if (Math.abs(at - 25344) < 120 || at > 32900) continue;
      const percent = series.chargePercent[index]!;
      expect(Math.abs(11.8 + percent / 100 - columnAt(rows, 2, at))).toBeLessThan(1e-3);
    }
  },
);

test.skipIf(ngspice === null)(
  'two unequal lead blocks with gassing charge as the circuit simulator says',
  () => {
    const block = {
      ...newBlock(),
      capacityAh: 18,
      rating: { kind: 'exponent' as const, exponent: 1 },
    };
    const strong = electricalUnit(buildBlockModel(block, newBlockConditions));
    const weak = electricalUnit(
      buildBlockModel(block, {
        ...newBlockConditions,
        capacityPercent: 75,
        resistancePercent: 150,
      }),
    );
    // The circuit has the open-circuit line at 41 points only: give the simulation the same line.
    const coarse = (unit: typeof strong) => ({
      ...unit,
      openCircuit: {
        values: Float64Array.from(
          { length: 41 },
          (_, index) => unit.openCircuit.values[index * 25]!,
        ),
      },
    });
    const first = plainUnit({ ...coarse(strong), startShare: 0.3 });
    const second = plainUnit({ ...coarse(weak), startShare: 0.25, position: 2 });
    const rows = runTransient(
      [
        chargerElement('n', 3, 29.2),
        unitElements('x', first, 'm', '0'),
        unitElements('y', second, 'n', 'm'),
      ].join('\n'),
      '5 40000 0 20 uic',
      ['v(n)', 'v(sx)', 'v(sy)', 'v(m)'],
    );
    const result = simulateCharge(
      packOf(first, second),
      plainProgram({ currentA: 3, endVoltageV: 29.2, tailCurrentA: null }),
      {
        ...usualWishes,
        longestHours: 11,
        shareStep: 0.001,
      },
    );
    const { series } = result;
    const [one, two] = result.units;
    expect(one!.endPercent / 100).toBeCloseTo(columnAt(rows, 2, 39600), 3);
    expect(two!.endPercent / 100).toBeCloseTo(columnAt(rows, 3, 39600), 3);
    const bulkS = result.bulkHours * 3600;
    for (let index = 20; index < series.timeH.length; index += 40) {
      const at = series.timeH[index]! * 3600;
      if (Math.abs(at - bulkS) < 200) continue;
      expect(
        Math.abs(series.voltageV[index]! - columnAt(rows, 1, at)),
        `volts at ${at} s`,
      ).toBeLessThan(0.02);
    }
    // The weaker block stands higher than the other once it is full.
    const highest = Math.max(...rows.map((row) => row[1]! - row[4]!));
    expect(Math.abs(two!.highestV - highest)).toBeLessThan(0.05);
  },
);
