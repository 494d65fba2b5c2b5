import { describe, expect, test } from 'vitest';
import { conductorAmpacityA, conductorAreaMm2, conductorOhmPerKm } from '#core/wiring/index.ts';
import { branchResistance } from '#core/wiring/branch-resistance.ts';
import { fuseOpening } from '#core/wiring/fuse-opening.ts';
import { newBranch, newFuse } from '#core/wiring/new-parts.ts';
import { faultAreaMm2 } from '#core/wiring/smallest-conductor.ts';
import { heatingTimeS } from '#core/wiring/wire-heating.ts';
import { packSupply } from '#core/wiring/supply.ts';
import { newBlock, newOption, newPack } from '#core/plan/defaults.ts';
import { checkAgainst } from '../support/check-against.ts';

const chapter = 'Wiring';

describe('the wiring against published figures', () => {
  test('IEC 60228 class 5 resistances at 20 °C go through the general conductor', () => {
    for (const [areaMm2, ohmPerKm] of [
      [0.5, 39],
      [1.5, 13.3],
      [2.5, 7.98],
      [6, 3.3],
      [16, 1.21],
      [50, 0.386],
    ] as const) {
      checkAgainst({
        chapter,
        quantity: `Resistance of ${areaMm2} mm² at 20 °C`,
        unit: 'Ω/km',
        source: 'IEC 60228, class 5',
        class: 'published',
        reference: ohmPerKm,
        ours: conductorOhmPerKm({ system: 'metric', areaMm2 }, 20),
        within: { absolute: 1e-9 },
      });
    }
  });

  test('NEC chapter 9 table 8 resistances at 75 °C go through the general conductor', () => {
    for (const [gauge, ohmPerKft] of [
      [18, 7.95],
      [12, 1.98],
      [8, 0.778],
      [4, 0.308],
      [2, 0.194],
    ] as const) {
      checkAgainst({
        chapter,
        quantity: `Resistance of ${gauge} AWG at 75 °C`,
        unit: 'Ω/kft',
        source: 'NEC, chapter 9, table 8, stranded',
        class: 'published',
        reference: ohmPerKft,
        ours: conductorOhmPerKm({ system: 'awg', gauge }, 75) * 0.3048,
        within: { share: 1e-6 },
      });
    }
  });

  test('ASTM B258 areas: 4/0 is 107.2 mm², 12 AWG 3.309 mm²', () => {
    for (const [gauge, areaMm2] of [
      [-3, 107.22],
      [12, 3.3088],
      [18, 0.8231],
    ] as const) {
      checkAgainst({
        chapter,
        quantity: `Copper area of gauge ${gauge}`,
        unit: 'mm²',
        source: 'ASTM B258',
        class: 'published',
        reference: areaMm2,
        ours: conductorAreaMm2({ system: 'awg', gauge }),
        within: { share: 2e-4 },
      });
    }
  });

  test('33 CFR 183.425 table 5 goes through the general conductor, with its bundle factors', () => {
    for (const [gauge, insulationC, bundled, amperes] of [
      [18, 60, 1, 10],
      [14, 105, 1, 35],
      [10, 75, 3, 28],
      [6, 90, 6, 60],
      [2, 80, 24, 87.5],
    ] as const) {
      checkAgainst({
        chapter,
        quantity: `Ampacity of ${gauge} AWG, ${insulationC} °C, ${bundled} bundled`,
        unit: 'A',
        source: '33 CFR 183.425, table 5',
        class: 'published',
        reference: amperes,
        ours: conductorAmpacityA({ system: 'awg', gauge }, insulationC, bundled, 30),
        within: { absolute: 1e-9 },
      });
    }
  });

  test('engine-space factors of 33 CFR 183.425 at 50 °C come out within 0.01', () => {
    for (const [insulationC, factor] of [
      [60, 0.58],
      [75, 0.75],
      [80, 0.78],
      [90, 0.82],
      [105, 0.85],
    ] as const) {
      const wire = { system: 'awg', gauge: 10 } as const;
      const ours =
        conductorAmpacityA(wire, insulationC, 1, 50) / conductorAmpacityA(wire, insulationC, 1, 30);
      checkAgainst({
        chapter,
        quantity: `Factor at 50 °C for ${insulationC} °C insulation`,
        unit: '',
        source: '33 CFR 183.425, engine spaces',
        class: 'from memory',
        reference: factor,
        ours,
        within: { absolute: 0.01 },
      });
    }
  });

  test('2.5 mm² over 3 m drops 0.7182 V at 15 A and 20 °C, 0.8593 V at 70 °C', () => {
    const branch = newBranch('b', 'Branch', 'x', 'y', 3);
    for (const [wireC, dropV] of [
      [20, 0.7182],
      [70, 0.8593],
    ] as const) {
      const ours =
        15 * branchResistance(branch, { system: 'metric', areaMm2: 2.5 }, wireC).totalOhm;
      checkAgainst({
        chapter,
        quantity: `Drop at ${wireC} °C`,
        unit: 'V',
        source: '7.98 Ω/km (IEC 60228), 0.00393 /K',
        class: 'recomputed',
        reference: dropV,
        ours,
        within: { absolute: 5e-5 },
      });
    }
  });

  test('the heated rod without heat loss gives the adiabatic withstand of IEC 60364-5-54', () => {
    // k = 115 for PVC from 70 to 160 °C: 2.5 mm² stand (115 x 2.5 / I)² seconds.
    for (const currentA of [500, 1000, 2500]) {
      const wire = {
        ohmPerM20: 0.017241 / 2.5,
        areaMm2: 2.5,
        ampacityA: 1e-3,
        ratedC: 70,
        ambientC: 30,
      };
      checkAgainst({
        chapter,
        quantity: `Withstand of 2.5 mm² at ${currentA} A`,
        unit: 's',
        source: 'IEC 60364-5-54, k = 115 (PVC)',
        class: 'published',
        reference: ((115 * 2.5) / currentA) ** 2,
        ours: heatingTimeS(wire, currentA, 70, 160)!,
        within: { share: 0.005 },
      });
    }
  });

  test('a 100 A blade fuse on 350 A, open within 0.5 s, asks for the copper of S = I sqrt(t)/k', () => {
    // k = 226 sqrt(ln((234.5 + 160)/(234.5 + 75))) = 111.31 for PVC that starts at 75 °C; 350 sqrt(0.5)/111.31.
    checkAgainst({
      chapter,
      quantity: 'Copper asked by 350 A for 0.5 s',
      unit: 'mm²',
      source: 'IEC 60364-5-54: S = I sqrt(t)/k, gate of ISO 8820-3 from memory',
      class: 'recomputed',
      reference: 2.2234,
      ours: faultAreaMm2(
        { insulation: 'pvc', insulationC: 75 },
        { guard: newFuse('blade', 100), faultA: 350 },
      ),
      within: { absolute: 5e-4 },
    });
  });

  test('blade fuse gates of ISO 8820-3 come back from the general fuse', () => {
    for (const [times, earliestS, latestS] of [
      [1.35, 0.75, 600],
      [1.6, 0.25, 50],
      [2, 0.15, 5],
      [3.5, 0.04, 0.5],
      [6, 0.02, 0.1],
    ] as const) {
      const band = fuseOpening(newFuse('blade', 30), 30 * times);
      checkAgainst({
        chapter,
        quantity: `Blade fuse at ${times} x, earliest`,
        unit: 's',
        source: 'ISO 8820-3',
        class: 'from memory',
        reference: earliestS,
        ours: band.earliestS,
        within: { share: 1e-9 },
      });
      checkAgainst({
        chapter,
        quantity: `Blade fuse at ${times} x, latest`,
        unit: 's',
        source: 'ISO 8820-3',
        class: 'from memory',
        reference: latestS,
        ours: band.latestS,
        within: { share: 1e-9 },
      });
    }
  });

  test('two 12 V blocks of 15 mΩ in series short at about 850 A', () => {
    const block = { ...newBlock(), resistanceOhm: 0.015 };
    const supply = packSupply(newOption([], { ...newPack(block, 2), linkResistanceOhm: 0 }), 25);
    const ours = supply.fullV / supply.stringOhm;
    checkAgainst({
      chapter,
      quantity: 'Short circuit of two 12 V blocks of 15 mΩ',
      unit: 'A',
      source: 'E / R, 25.5 V over 30 mΩ',
      class: 'recomputed',
      reference: 850,
      ours,
      within: { absolute: 10 },
    });
    expect(ours).toBeGreaterThan(840);
  });
});
