import { describe, expect, it } from 'vitest';
import { resistorOverload } from '#core/formulas/drive/resistor-overload.ts';
import { roadForce } from '#core/formulas/drive/road-force.ts';
import { evaluateFormula } from '#core/formulas/index.ts';
import type { FormulaArguments } from '#core/formulas/index.ts';
import { ampacityA, bundleFactor } from '#core/formulas/wiring/ampacity.ts';
import { restVoltagePerCellV } from '#core/formulas/voltage/open-circuit-voltage.ts';
import { bladeFuseBreaking } from '#core/formulas/wiring/blade-fuse-gates.ts';
import { evaluate, valueOf } from '../support/evaluate.ts';

/** The steps of a working. */
const stepsOf = (id: string, inputs: FormulaArguments): readonly number[] => {
  const result = evaluateFormula(id, inputs);
  if (!result.ok) throw new Error(`${id}: ${result.field} ${result.problem}`);
  return result.steps.map(({ value }) => value);
};
const firstStep = (id: string, inputs: FormulaArguments): number => stepsOf(id, inputs)[0]!;

describe('steps of a working', () => {
  // [R] by hand from the equation each working shows.
  it('of a conductor name the resistance at 20 °C whatever its temperature: 58 m of 1 mm² are 1 Ω', () => {
    const wire = { areaMm2: 1, lengthM: 58, temperatureC: 70 };
    expect(firstStep('conductor-resistance', wire)).toBeCloseTo(1, 12);
  });
  it('of a fault name I² t: 2500 A over 0.1 s are 625,000 A²s', () => {
    expect(firstStep('fault-withstand', { currentA: 2500, timeS: 0.1 })).toBeCloseTo(625_000, 6);
  });
  it('of a precharge name R C: 12 Ω and 1000 µF are 12 ms', () => {
    const inputs = { busVoltageV: 24, capacitanceUf: 1000, inrushA: 2 };
    expect(firstStep('precharge', inputs)).toBeCloseTo(0.012, 12);
  });
  it('of a converter name k I and R I²: 0.1 V and 0.04 Ω at 3 A are 0.3 W and 0.36 W', () => {
    const inputs = { inputV: 24, outputV: 5, outputA: 3, idleW: 0.05, dropV: 0.1 };
    const steps = stepsOf('converter-loss', { ...inputs, resistanceOhm: 0.04 });
    expect(steps[0]).toBeCloseTo(15, 12);
    expect(steps[1]).toBeCloseTo(0.3, 12);
    expect(steps[2]).toBeCloseTo(0.36, 12);
  });
  it('of a standby name 0.48 A·h a day for 20 mA, and 6 A·h for half of 12', () => {
    const steps = stepsOf('standby-days', { capacityAh: 12, idleMa: 20, usablePercent: 50 });
    expect(steps[0]).toBeCloseTo(0.48, 12);
    expect(steps[1]).toBeCloseTo(6, 12);
  });
  it('of an NMC cell name both electrodes, whose difference is the cell', () => {
    const half = { chargePercent: 50 };
    const [positiveV, negativeV] = stepsOf('nmc-half-cells', half);
    expect(positiveV! - negativeV!).toBeCloseTo(valueOf('nmc-half-cells', 'cellV', half), 12);
  });
});

describe('constants of the wiring', () => {
  // 33 CFR 183.425, table 5 [P].
  it('take one wire in 30 °C air where nothing else is said, and half the current in any large bundle', () => {
    expect(ampacityA(12, '105')).toBe(45);
    expect(bundleFactor(25)).toBe(0.5);
  });
  // ASTM B258: 18 AWG is 0.823 mm² [P]; nominal areas are rounded by no more than 1 % here.
  it('accept 0.82 mm² as 18 AWG and refuse 0.80 mm²', () => {
    expect(valueOf('ampacity-by-area', 'tableGauge', { areaMm2: 0.82 })).toBe(18);
    expect(evaluateFormula('ampacity-by-area', { areaMm2: 0.8 })).toMatchObject({ ok: false });
  });
  // IEC 60228: 1 mm² of class 5 has 19.5 Ω/km [P]; 200 m by hand.
  it('give 200 m of 1 mm² flexible wire 3.9 Ω', () => {
    const wire = { nominalMm2: '1', lengthM: 200 };
    expect(valueOf('flexible-conductor-resistance', 'resistanceOhm', wire)).toBeCloseTo(3.9, 12);
  });
  // ISO 8820-3 from memory: holds at 1.1 times; nothing is said up to 1.35 times. 1 kA at 32 and 58 V: from memory.
  it('leave a blade fuse undecided at 1.15 times its rating and let it break 1 kA at 32 and 58 V', () => {
    expect(evaluate('blade-fuse-time', { ratingA: 20, currentA: 23 })['opening']).toBe('between');
    expect(bladeFuseBreaking).toEqual({ currentA: 1000, voltagesV: [32, 58] });
  });
});

describe('constants of the charge', () => {
  // Makers' handbooks [P]: lead factor 1.10; lithium ends at 0.02 to 0.05 C, factor 1; NMC 4.20 V.
  it('put 1.1 times the charge back into lead, and end lithium at 0.02 to 0.05 C with none on top', () => {
    const pack = { cellGroups: 1, capacityAh: 10 };
    expect(valueOf('charge-window', 'chargeFactor', { ...pack, family: 'lead' })).toBe(1.1);
    for (const [family, endV] of [
      ['lfp', 3.65],
      ['nmc', 4.2],
    ] as const) {
      const window = evaluate('charge-window', { ...pack, family });
      expect(window).toMatchObject({ endLowV: endV, endHighV: endV, chargeFactor: 1 });
      expect(window['tailLowA']).toBeCloseTo(0.2, 12);
      expect(window['tailHighA']).toBeCloseTo(0.5, 12);
    }
  });
  // 8 · 3.65 V · 1.005 = 29.346 V by hand [R].
  it('stop calling 29.2 V and a charger equal at half a percent', () => {
    expect(valueOf('charge-voltage-twins', 'lfpCells', { endV: 29.345 })).toBe(8);
    expect(valueOf('charge-voltage-twins', 'lfpCells', { endV: 29.347 })).toBe(0);
  });
  // 10 A·h over 10 to 11 V, 0.1 Ω, 1 A down to 0.5 A at 11.06 V: 9.6 + 0.5 = 10.1 A·h is more than there is; 11.04 V: 9.9.
  it('refuse a charge of 1 % more than the block holds', () => {
    const charge = { capacityAh: 10, emptyV: 10, fullV: 11, resistanceOhm: 0.1, currentA: 1 };
    expect(
      valueOf('linear-charge', 'chargedAh', { ...charge, tailA: 0.5, endV: 11.04 }),
    ).toBeCloseTo(9.9, 9);
    expect(evaluateFormula('linear-charge', { ...charge, tailA: 0.5, endV: 11.06 })).toMatchObject({
      ok: false,
      field: 'endV',
    });
  });
  // IEC 62485-2, currents [P]: vented boost 20, VRLA float 1 mA/A·h; 0.05 · 6 · 12 / 1000 = 0.0036 m³/h for each mA [R].
  it('ask 0.072 m³/h for a vented block in boost and 0.0036 m³/h for a sealed one on float', () => {
    const block = { cells: 6, capacityAh: 12 };
    const flow = (construction: string, stage: string) =>
      valueOf('ventilation', 'flowM3PerH', { ...block, construction, stage });
    expect(flow('vented', 'boost')).toBeCloseTo(0.072, 12);
    expect(flow('vrla', 'float')).toBeCloseTo(0.0036, 12);
  });
});

describe('constants of the drive', () => {
  // By hand [R]: 0.006 Ω · (20 A)² + 2.4 W = 4.8 W.
  it('lose 4.8 W in a controller of 6 mΩ and 2.4 W idle at 20 A', () => {
    const inputs = { busVoltageV: 24, duty: 0.5, motorA: 20, switchOhm: 0.006, idleW: 2.4 };
    expect(valueOf('controller-current', 'lossW', inputs)).toBeCloseTo(4.8, 12);
  });
  // Metal-element power resistors: from memory.
  it('bear five times the rated power of a resistor for five seconds', () => {
    expect(resistorOverload).toEqual({ timesRated: 5, timeS: 5 });
  });
  // 1.2 kg/m³ at 20 °C; 1.2 · 0.5 · 10²/2 = 30 N by hand [R].
  it('push 30 N of air at 10 m/s with 0.5 m²', () => {
    expect(roadForce(60, 0, 0, 10, 0.5).dragN).toBeCloseTo(30, 12);
  });
  // Marks, Carvill [P]; grass and hard wheels common practice.
  const rolling = [
    ['new-asphalt-or-concrete', 0.01, 0.01],
    ['worn-asphalt-or-concrete', 0.02, 0.02],
    ['packed-gravel', 0.012, 0.012],
    ['loose-worn-gravel', 0.04, 0.04],
    ['soil', 0.08, 0.08],
    ['sand', 0.1, 0.2],
    ['grass', 0.06, 0.1],
    ['hard-wheels-on-paving', 0.02, 0.04],
  ] as const;
  it.each(rolling)('roll on %s with %f to %f', (surface, low, high) => {
    expect(evaluate('rolling-coefficient', { surface })).toMatchObject({ low, high });
  });
  // π · 0.25 m · 2.5/s · 3600/1000 by hand [R].
  it('show 1.963 m/s as 7.0686 km/h', () => {
    const inputs = { motorRpm: 3000, gearRatio: 20, wheelDiameterM: 0.25 };
    expect(valueOf('wheel-speed', 'speedKmPerH', inputs)).toBeCloseTo(7.068583, 6);
  });
});

describe('constants of a block', () => {
  // Makers' curves, from memory; 1200 (40/30)^(ln(500/1200)/ln(50/30)) by hand [R].
  it('last 733 cycles at 40 % depth, on the power law between 1200 at 30 % and 500 at 50 %', () => {
    expect(valueOf('cycle-life', 'cycles', { depthPercent: 40 })).toBeCloseTo(732.92, 2);
  });
  // Makers' handbooks [P]: AGM 3, gel 2, flooded 6 to 12 % a month at 20 °C. The middle of flooded: common practice, no source.
  it.each([
    ['agm', 97, 97, 97],
    ['gel', 98, 98, 98],
    ['flooded', 94, 91, 88],
  ] as const)('a month at 20 °C leaves %s %f, likely %f, at least %f %%', (...of) => {
    const [chemistry, most, likely, least] = of;
    const left = evaluate('self-discharge', { chemistry, days: 365.25 / 12, temperatureC: 20 });
    expect(left['mostChargeLeftPercent']).toBeCloseTo(most, 9);
    expect(left['chargeLeftPercent']).toBeCloseTo(likely, 9);
    expect(left['leastChargeLeftPercent']).toBeCloseTo(least, 9);
  });
  // Rest voltages of LFP from memory: 3.20 and 3.22 V at 20 and 30 %, 3.35 and 3.40 V at 90 and 100 %.
  it('refuse to tell the charge of LFP from 3.201 and 3.349 V, and tell it from 3.199 and 3.351 V', () => {
    const read = (restVoltageV: number) =>
      evaluateFormula('charge-from-rest-voltage', { chemistry: 'lfp', restVoltageV }).ok;
    expect([3.199, 3.201, 3.349, 3.351].map(read)).toEqual([true, false, false, true]);
  });
  // Common practice, no source: 22 to 30, 14 to 20, 10 to 14 mΩ at 7, 12, 20 A·h; worn 2 to 5 times. Means by hand [R].
  it('have the resistance of the trade, in the geometric middle the geometric mean', () => {
    const at = (capacityAh: number) => {
      const found = evaluate('lead-resistance-range', { capacityAh });
      return [found['lowMilliohm'], found['highMilliohm']].map(Number);
    };
    const expectAt = (capacityAh: number, low: number, high: number) => {
      expect(at(capacityAh)[0]).toBeCloseTo(low, 3);
      expect(at(capacityAh)[1]).toBeCloseTo(high, 3);
    };
    expectAt(7, 22, 30);
    expectAt(9.165151, 17.54993, 24.4949);
    expectAt(15.491933, 11.83216, 16.7332);
    expectAt(20, 10, 14);
    const worn = evaluate('lead-resistance-range', { capacityAh: 20 });
    expect(worn['wornLowMilliohm']).toBeCloseTo(20, 9);
    expect(worn['wornHighMilliohm']).toBeCloseTo(70, 9);
  });
  // Chen et al. 2020 [P]: 4.2 V when full.
  it('hold the voltage of a full NMC cell above full charge', () => {
    expect(restVoltagePerCellV('nmc', 110)).toBeCloseTo(4.2, 3);
  });
});

describe('constants of the pack', () => {
  // E²/(4 R) = 144/0.4 = 360 W by hand [R].
  it('let a 12 V source of 0.1 Ω give 360 W at most', () => {
    const inputs = { openCircuitV: 12, resistanceOhm: 0.1, powerW: 50 };
    expect(valueOf('constant-power-voltage', 'largestPowerW', inputs)).toBeCloseTo(360, 9);
  });
  // Currents 1/e, 1, e A; ln t = 1.01, -0.02, -0.99: the line is -ln I, off by 0.01, -0.02, 0.01; 100 (1 - e^-0.02) % [R].
  it('name 1.980 % as the largest residual of a Peukert fit', () => {
    const hours = [1.01, -0.02, -0.99].map(Math.exp);
    const capacityAh = hours.map((time, index) => time * Math.exp(index - 1));
    const fit = evaluate('peukert-fit', { hours, capacityAh });
    expect(fit['exponent']).toBeCloseTo(1, 9);
    expect(fit['largestResidualPercent']).toBeCloseTo(1.980133, 6);
  });
  // 12 A·h with c = 0.4, half charged: 0.6 · 12/2 = 3.6 A·h bound, 2.4 A·h available, by hand [R].
  it('share half a charge between both wells', () => {
    const wells = { capacityAh: 12, availableShare: 0.4, levellingPerH: 1 };
    const state = evaluate('two-well-state', {
      ...wells,
      currentA: 0,
      timeH: 0,
      startPercent: 50,
    });
    expect(state['availableAh']).toBeCloseTo(2.4, 12);
    expect(state['boundAh']).toBeCloseTo(3.6, 12);
  });
  // A fit of three unknowns needs three points and no more.
  it('fit two wells to three ratings but not to two', () => {
    const ratings = { hours: [20, 5, 1], capacityAh: [12, 10.4, 7.6] };
    const share = valueOf('two-well-fit', 'availableShare', ratings);
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThanOrEqual(1);
    expect(
      evaluateFormula('two-well-fit', { hours: [20, 5], capacityAh: [12, 10.4] }),
    ).toMatchObject({ ok: false, field: 'hours' });
  });
});
