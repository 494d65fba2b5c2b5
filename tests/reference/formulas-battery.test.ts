import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '#core/formulas/index.ts';
import { evaluate, valueOf } from '../support/evaluate.ts';

const lfpAsk = (restVoltageV: number) =>
  evaluateFormula('charge-from-rest-voltage', { chemistry: 'lfp', restVoltageV }).ok;

const leadShare = (temperatureC: number) =>
  valueOf('lead-capacity-temperature', 'share', { capacityAh: 12, temperatureC });

const nmcShare = (temperatureC: number) =>
  valueOf('nmc-capacity-temperature', 'share', { capacityAh: 1.5, temperatureC });

const lifeYearsAt = (temperatureC: number) =>
  valueOf('life-temperature', 'lifeAtTemperatureYears', { lifeYears: 10, temperatureC });

const agmCycles = (depthPercent: number) => valueOf('cycle-life', 'cycles', { depthPercent });

describe('rest voltage', () => {
  // [P] handbook table, 12 V flooded, rest, 25 °C, 100 to 10 %.
  const flooded = [12.7, 12.58, 12.46, 12.36, 12.28, 12.2, 12.12, 12.02, 11.88, 11.72];
  it('of a flooded block stands in the handbook table', () => {
    for (const [index, voltageV] of flooded.entries()) {
      const inputs = { chemistry: 'flooded', cellGroups: 6, chargePercent: 100 - 10 * index };
      expect(valueOf('open-circuit-voltage', 'blockV', inputs)).toBeCloseTo(voltageV, 9);
    }
  });
  // [M] makers' tables.
  const sealed = {
    agm: [12.8, 12.6, 12.3, 12],
    gel: [12.85, 12.65, 12.35, 12],
  } as const;
  for (const chemistry of ['agm', 'gel'] as const) {
    it(`of a ${chemistry} block has the remembered values at 100, 75, 50 and 25 %`, () => {
      for (const [index, voltageV] of sealed[chemistry].entries()) {
        const inputs = { chemistry, cellGroups: 6, chargePercent: 100 - 25 * index };
        expect(valueOf('open-circuit-voltage', 'blockV', inputs)).toBeCloseTo(voltageV, 9);
      }
    });
  }
  // [M] LFP table; hysteresis measured.
  const lfp = [2.5, 3, 3.2, 3.22, 3.25, 3.26, 3.27, 3.3, 3.32, 3.35, 3.4];
  it('of an LFP cell has the remembered values and 34 mV between charging and discharging', () => {
    for (const [index, voltageV] of lfp.entries()) {
      const values = evaluate('open-circuit-voltage', {
        chemistry: 'lfp',
        chargePercent: 10 * index,
      });
      expect(values['cellV']).toBeCloseTo(voltageV, 9);
      expect(values['hysteresisV']).toBe(0.034);
    }
  });
  // [P, R] Chen et al., J. Electrochem. Soc. 167 (2020) 080534: the paper's functions evaluated in NumPy, end points
  // solved for 2.5 V and 4.2 V with the paper's site counts and lithium inventory. The rounded 50 % is from the same run.
  const nmc = [2.5, 3.2959, 3.4852, 3.5814, 3.667, 3.7509, 3.8406, 3.9479, 4.0421, 4.0967, 4.2];
  it('of an NMC811 cell follows the electrode functions of Chen et al.', () => {
    for (const [index, voltageV] of nmc.entries()) {
      const inputs = { chargePercent: 10 * index };
      expect(Math.abs(valueOf('nmc-half-cells', 'cellV', inputs) - voltageV)).toBeLessThan(1e-4);
    }
  });
  it('is refused where the source has no figure', () => {
    expect(
      evaluateFormula('open-circuit-voltage', { chemistry: 'agm', chargePercent: 10 }),
    ).toMatchObject({
      ok: false,
      field: 'chargePercent',
    });
  });
});

describe('charge from rest voltage', () => {
  it('inverts the tables', () => {
    for (const chemistry of ['flooded', 'agm', 'gel', 'nmc']) {
      for (const chargePercent of [30, 47, 88, 100]) {
        const restVoltageV = valueOf('open-circuit-voltage', 'cellV', { chemistry, chargePercent });
        const back = valueOf('charge-from-rest-voltage', 'chargePercent', {
          chemistry,
          restVoltageV,
        });
        expect(back).toBeCloseTo(chargePercent, 6);
      }
    }
  });
  it('never tells the charge of LFP between 20 and 90 %', () => {
    expect(lfpAsk(3.27)).toBe(false);
    expect(lfpAsk(3.33)).toBe(false);
    expect(lfpAsk(3.1)).toBe(true);
    expect(lfpAsk(3.38)).toBe(true);
  });
  it('refuses a voltage outside the table and says between which values it can be', () => {
    const result = evaluateFormula('charge-from-rest-voltage', {
      chemistry: 'agm',
      restVoltageV: 13.4,
      cellGroups: 6,
    });
    expect(result).toMatchObject({ ok: false, field: 'restVoltageV' });
    expect(!result.ok && result.remedy).toContain('12.00 to 12.80');
  });
});

describe('voltage under load', () => {
  // [R] Shepherd 1965 by hand: 12.6 - 0.02·(12/6)·5 - 0.05·5 + 0.4·e^(-10·6/12) = 12.6 - 0.2 - 0.25 + 0.4·e^-5.
  it('follows Shepherd’s curve worked by hand', () => {
    const inputs = {
      constantV: 12.6,
      polarisationOhm: 0.02,
      capacityAh: 12,
      resistanceOhm: 0.05,
      currentA: 5,
      drawnAh: 6,
      firstFallV: 0.4,
      firstFallExponent: 10,
    };
    expect(valueOf('shepherd-voltage', 'voltageV', inputs)).toBeCloseTo(
      12.15 + 0.4 * Math.exp(-5),
      12,
    );
  });
  // [R] Tremblay & Dessaint 2009 by hand: 12 - 0.04·2 - 0.05·(1.2/0.6)·(0.6 + 2) + 0.8·e^(-10·0.6) = 11.66 + 0.8·e^-6.
  it('follows the discharge equation with filtered current worked by hand', () => {
    const inputs = {
      constantV: 12,
      polarisationVPerAh: 0.05,
      capacityAh: 1.2,
      resistanceOhm: 0.04,
      currentA: 2,
      filteredA: 2,
      drawnAh: 0.6,
      exponentialV: 0.8,
      exponentialPerAh: 10,
    };
    expect(valueOf('filtered-current-voltage', 'voltageV', inputs)).toBeCloseTo(
      11.66 + 0.8 * Math.exp(-6),
      12,
    );
  });
  it('of a full block without load is the constant and the first fall in both curves', () => {
    const both = { constantV: 12, capacityAh: 10, resistanceOhm: 0.1, currentA: 0, drawnAh: 0 };
    expect(
      valueOf('shepherd-voltage', 'voltageV', { ...both, polarisationOhm: 0.1, firstFallV: 0.5 }),
    ).toBe(12.5);
    expect(
      valueOf('filtered-current-voltage', 'voltageV', {
        ...both,
        polarisationVPerAh: 0.1,
        filteredA: 0,
        exponentialV: 0.5,
      }),
    ).toBe(12.5);
  });
  it('falls by I R at once and by I (R + R1) in the end', () => {
    const inputs = {
      openCircuitV: 12.7,
      currentA: 10,
      resistanceOhm: 0.02,
      polarisationOhm: 0.01,
      polarisationS: 60,
    };
    expect(valueOf('loaded-voltage', 'sagV', { ...inputs, timeS: 0 })).toBeCloseTo(0.2, 12);
    expect(valueOf('loaded-voltage', 'sagV', { ...inputs, timeS: 60 })).toBeCloseTo(
      0.2 + 0.1 * (1 - Math.exp(-1)),
      12,
    );
    expect(valueOf('loaded-voltage', 'sagV', { ...inputs, timeS: 1e6 })).toBeCloseTo(0.3, 12);
  });
});

describe('temperature, age and rest', () => {
  // [P] IEC 60896-21, lambda 0.006.
  it('gives lead 0.88 of its capacity at 0 °C and 1.06 at 30 °C', () => {
    expect(leadShare(0)).toBeCloseTo(0.88, 12);
    expect(leadShare(30)).toBeCloseTo(1.06, 12);
    expect(leadShare(20)).toBe(1);
  });
  // [P] measurement on a 1.5 A·h NMC cell at 10 A.
  it('gives an NMC cell 60, 75, 80 and 100 % at -20, -10, 0 and 25 °C', () => {
    expect([-20, -10, 0, 25].map(nmcShare)).toEqual([0.6, 0.75, 0.8, 1]);
  });
  // [P] 10, 7.07 and 5 years at 20, 25 and 30 °C.
  it('halves the life with each 10 K', () => {
    expect(lifeYearsAt(20)).toBe(10);
    expect(lifeYearsAt(25)).toBeCloseTo(7.07, 2);
    expect(lifeYearsAt(30)).toBe(5);
  });
  // [P] -3 mV/K per cell: 6 cells 15 K colder than 25 °C gain 0.27 V.
  it('raises the charge voltage of cold lead', () => {
    const inputs = { voltageV: 13.65, cells: 6, temperatureC: 10 };
    expect(valueOf('charge-voltage-temperature', 'compensatedV', inputs)).toBeCloseTo(13.92, 12);
  });
  // [P] AGM 3, gel 2 % in a month at 20 °C, half of it at 10 °C.
  it('leaves 97 % of AGM and 98 % of gel after a month at 20 °C and loses half as much at 10 °C', () => {
    const days = 365.25 / 12;
    const left = (chemistry: string, temperatureC: number) =>
      valueOf('self-discharge', 'chargeLeftPercent', { chemistry, days, temperatureC });
    expect(left('agm', 20)).toBeCloseTo(97, 9);
    expect(left('gel', 20)).toBeCloseTo(98, 9);
    expect(left('agm', 10)).toBeCloseTo(98.5, 9);
    expect(left('agm', 0)).toBeCloseTo(99.25, 9);
  });
  // [M] makers' curves.
  it('lets AGM last 1200, 500 and 200 cycles at 30, 50 and 100 % depth', () => {
    expect(agmCycles(30)).toBeCloseTo(1200, 6);
    expect(agmCycles(50)).toBeCloseTo(500, 6);
    expect(agmCycles(100)).toBeCloseTo(200, 6);
  });
  // [CP] 7 A·h 22 to 30 mΩ, 12 A·h 14 to 20, 20 A·h 10 to 14.
  it('knows the usual resistance of small lead blocks', () => {
    const range = evaluate('lead-resistance-range', { capacityAh: 12 });
    expect(range['lowMilliohm']).toBeCloseTo(14, 9);
    expect(range['highMilliohm']).toBeCloseTo(20, 9);
  });
  it('divides what came out by what went in', () => {
    const cycle = { dischargeAh: 9, chargeAh: 10, dischargeWh: 105, chargeWh: 140 };
    expect(evaluate('round-trip-efficiency', cycle)).toMatchObject({
      chargeEfficiency: 0.9,
      energyEfficiency: 0.75,
    });
  });
});

describe('pack circuit', () => {
  // [R] 0.5 V over 30 mΩ.
  it('surges with 16.7 A when 0.5 V meet over 30 mΩ', () => {
    const inputs = { firstV: 12.8, secondV: 12.3, firstOhm: 0.015, secondOhm: 0.015 };
    expect(valueOf('joining-surge', 'surgeA', inputs)).toBeCloseTo(16.6667, 3);
  });
  // About 850 A for two 12 V blocks of 15 mΩ in series: 25.4 to 25.6 V over 30 mΩ [R].
  it('shorts two 12 V blocks of 15 mΩ in series with about 850 A', () => {
    const inputs = { blockV: 12.75, blockOhm: 0.015, inSeries: 2 };
    expect(valueOf('short-circuit-current', 'currentA', inputs)).toBeCloseTo(850, 9);
  });
  // [R] 24 V, 0.1 Ω, 80 W by hand: sqrt(576 - 32) = 23.32381, V = 23.661904 V.
  it('takes the upper root at constant power and reports collapse beyond a quarter of E²/R', () => {
    const source = { openCircuitV: 24, resistanceOhm: 0.1 };
    expect(valueOf('constant-power-voltage', 'voltageV', { ...source, powerW: 80 })).toBeCloseTo(
      23.661904,
      6,
    );
    expect(valueOf('constant-power-voltage', 'voltageV', { ...source, powerW: 1440 })).toBeCloseTo(
      12,
      9,
    );
    expect(evaluateFormula('constant-power-voltage', { ...source, powerW: 1441 })).toMatchObject({
      ok: false,
      field: 'powerW',
    });
  });
  it('holds the rest voltage at any power without resistance', () => {
    const values = evaluate('constant-power-voltage', {
      openCircuitV: 24,
      resistanceOhm: 0,
      powerW: 500,
    });
    expect(values).toEqual({ voltageV: 24, currentA: 500 / 24, largestPowerW: null });
  });
  it('adds blocks in series and in parallel', () => {
    const inputs = { blockV: 12, blockAh: 12, blockOhm: 0.015, inSeries: 2, inParallel: 2 };
    expect(evaluate('pack-totals', inputs)).toEqual({
      packV: 24,
      packAh: 24,
      packWh: 576,
      packOhm: 0.015,
    });
  });
});
