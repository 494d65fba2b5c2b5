import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '#core/formulas/index.ts';
import { evaluate, valueOf } from '../support/evaluate.ts';

const efficiencyWith = (more: object) =>
  valueOf('converter-loss', 'efficiency', { outputV: 5, outputA: 0.5, inputV: 12, ...more });

describe('motor', () => {
  // Textbook-companion example: Ke from 120 V at 6000 rpm; 60 V, 2.5 Ω, 0.5 N·m -> 2.618 A, 2672.75 rpm [P inputs, R].
  const constantVsPerRad = 120 / (200 * Math.PI);
  const motor = { voltageV: 60, resistanceOhm: 2.5, constantVsPerRad };
  it('takes its constant from voltage and free speed', () => {
    const inputs = { voltageV: 120, speedRpm: 6000 };
    expect(valueOf('motor-constant', 'constantVsPerRad', inputs)).toBeCloseTo(constantVsPerRad, 12);
  });
  it('turns at 2672.75 rpm with 2.618 A in the textbook example', () => {
    const point = evaluate('motor-point', { ...motor, torqueNm: 0.5 });
    expect(point['currentA']).toBeCloseTo(2.618, 3);
    expect(point['speedRpm']).toBeCloseTo(2672.75, 1);
  });
  it('turns all input to shaft power and heat', () => {
    const point = evaluate('motor-point', { ...motor, torqueNm: 1, noLoadCurrentA: 0.4 });
    expect(point['inputW']).toBeCloseTo(Number(point['shaftW']) + Number(point['heatW']), 9);
  });
  it('runs without loss at full efficiency when it has no free current and hardly any resistance', () => {
    const inputs = { ...motor, resistanceOhm: 1e-4, torqueNm: 0.1 };
    expect(valueOf('motor-point', 'efficiency', inputs)).toBeCloseTo(1, 5);
  });
  it('stalls at V/R and is best at the current its limits name', () => {
    const withFriction = { ...motor, noLoadCurrentA: 0.4 };
    const limits = evaluate('motor-limits', withFriction);
    expect(limits['stallA']).toBe(24);
    expect(limits['bestCurrentA']).toBeCloseTo(Math.sqrt(0.4 * 24), 12);
    // Independent of the closed form: the best of many torques through the point formula.
    const scan = Array.from({ length: 2000 }, (_, i) =>
      valueOf('motor-point', 'efficiency', { ...withFriction, torqueNm: (i + 1) * 0.002 }),
    );
    expect(Math.max(...scan)).toBeCloseTo(Number(limits['bestEfficiency']), 5);
  });
  it('names the largest torque when asked for more', () => {
    const result = evaluateFormula('motor-point', { ...motor, torqueNm: 100 });
    expect(result).toMatchObject({ ok: false, field: 'torqueNm' });
    // 24 A · 0.190986 N·m/A
    expect(!result.ok && result.remedy).toContain('4.584');
  });
  it('shares current in series and voltage in parallel with its twin', () => {
    const twin = { supplyV: 24, resistanceOhm: 0.5, constantVsPerRad: 0.05, motorA: 10 };
    expect(evaluate('two-motors', { ...twin, arrangement: 'series' })).toEqual({
      motorV: 12,
      supplyA: 10,
      torqueNm: 1,
      stallA: 24,
    });
    expect(evaluate('two-motors', { ...twin, arrangement: 'parallel' })).toEqual({
      motorV: 24,
      supplyA: 20,
      torqueNm: 1,
      stallA: 96,
    });
  });
  it('draws duty times motor current from the battery, and losses on top', () => {
    const inputs = { busVoltageV: 24, duty: 0.5, motorA: 20 };
    expect(valueOf('controller-current', 'batteryA', inputs)).toBe(10);
    const lossy = { ...inputs, switchOhm: 0.006, idleW: 2.4 };
    // (0.006·400 + 2.4)/24 = 0.2 A
    expect(valueOf('controller-current', 'batteryA', lossy)).toBeCloseTo(10.2, 12);
  });
  // One turn of a 0.25 m wheel is 0.785398 m; 3000 rpm through 20:1 is 2.5 turns a second [R].
  it('moves a wheel circumference with each wheel turn', () => {
    const inputs = { motorRpm: 3000, gearRatio: 20, wheelDiameterM: 0.25 };
    expect(valueOf('wheel-speed', 'speedMPerS', inputs)).toBeCloseTo(1.963495, 6);
  });
  // 20 W, 2 K/W, 600 s, 300 s -> 15.739 K [R].
  it('warms by 15.739 K after 300 s', () => {
    const node = { lossW: 20, resistanceKPerW: 2, timeConstantS: 600 };
    expect(valueOf('thermal-rise', 'riseK', { ...node, timeS: 300 })).toBeCloseTo(15.739, 3);
    expect(valueOf('thermal-rise', 'riseK', { ...node, timeS: 0 })).toBe(0);
  });
});

describe('road', () => {
  // g 9.80665 [R].
  it('asks 35.304 N and 49.43 W of 60 kg on grass', () => {
    const road = evaluate('road-force', { massKg: 60, rollingCoefficient: 0.06, speedMPerS: 1.4 });
    expect(road['forceN']).toBeCloseTo(35.304, 3);
    expect(road['powerW']).toBeCloseTo(49.43, 2);
  });
  it('asks 70.257 N and 98.36 W up a slope of 10 %', () => {
    const inputs = { massKg: 60, rollingCoefficient: 0.02, gradePercent: 10, speedMPerS: 1.4 };
    const road = evaluate('road-force', inputs);
    expect(road['forceN']).toBeCloseTo(70.257, 3);
    expect(road['powerW']).toBeCloseTo(98.36, 2);
  });
  // [P] Marks, Carvill; grass common practice.
  it('knows rolling coefficients and how each is founded', () => {
    expect(evaluate('rolling-coefficient', { surface: 'sand' })).toEqual({
      low: 0.1,
      high: 0.2,
      foundation: 'published',
    });
    expect(evaluate('rolling-coefficient', { surface: 'grass' })['foundation']).toBe(
      'common-practice',
    );
  });
});

describe('braking through a resistor', () => {
  // 10 V, 0.25 + 0.5 Ω, 60 kg, 1.6 m/s [R].
  const brake = { generatedV: 10, speedMPerS: 1.6, armatureOhm: 0.25, brakeOhm: 0.5, massKg: 60 };
  it('has the recomputed current, power, energy, time constant and way', () => {
    const braking = evaluate('resistor-braking', brake);
    expect(braking['peakA']).toBeCloseTo(13.333, 3);
    expect(braking['peakResistorW']).toBeCloseTo(88.89, 2);
    expect(braking['motionJ']).toBeCloseTo(76.8, 9);
    expect(braking['timeConstantS']).toBeCloseTo(1.152, 9);
    expect(braking['stopDistanceM']).toBeCloseTo(1.843, 3);
    expect(braking['resistorShare']).toBeCloseTo(2 / 3, 12);
  });
  it('creeps at 1.1241 m/s down a slope of 10 % and never holds', () => {
    expect(valueOf('resistor-creep', 'creepMPerS', { ...brake, gradePercent: 10 })).toBeCloseTo(
      1.1241,
      4,
    );
    expect(
      valueOf('resistor-creep', 'creepMPerS', { ...brake, brakeOhm: 0, gradePercent: 1 }),
    ).toBeGreaterThan(0);
  });
  // From memory of MIL-PRF-49465: 5 times rated power for 5 s.
  it('may overload a power resistor five times for five seconds', () => {
    expect(evaluate('resistor-overload', { ratedW: 25, peakW: 125 })['within']).toBe('yes');
    expect(evaluate('resistor-overload', { ratedW: 25, peakW: 126 })['within']).toBe('no');
  });
});

describe('converter', () => {
  // P0 0.05 W, k 0.10 V, R 0.04 Ω [R].
  it('turns 5 V 2 A into 0.8675 A from 12 V at 0.96061', () => {
    const values = evaluate('converter-loss', { outputV: 5, outputA: 2, inputV: 12 });
    expect(values['efficiency']).toBeCloseTo(0.96061, 5);
    expect(values['inputA']).toBeCloseTo(0.8675, 9);
  });
  it('reaches 0.95785 at 5 V 0.5 A, 0 without load and 1 without loss', () => {
    expect(efficiencyWith({})).toBeCloseTo(0.95785, 5);
    expect(efficiencyWith({ outputA: 0 })).toBe(0);
    expect(efficiencyWith({ idleW: 0, dropV: 0, resistanceOhm: 0 })).toBe(1);
  });
  // By hand: 0.95·12 - 2·0.1 = 11.2 V; (12 + 0.2)/0.95 = 12.842105 V.
  it('browns out below its dropout voltage', () => {
    const low = evaluate('converter-dropout', { setV: 12, inputV: 12, outputA: 2 });
    expect(low['outputV']).toBeCloseTo(11.2, 12);
    expect(low['leastInputV']).toBeCloseTo(12.842105, 6);
    expect(low['brownOut']).toBe('yes');
    expect(evaluate('converter-dropout', { setV: 12, inputV: 24, outputA: 2 })['brownOut']).toBe(
      'no',
    );
  });
  it('flattens a pack at standby in charge over current, sooner with self-discharge, never with nothing on', () => {
    // 12 A·h at 20 mA: 600 h = 25 days, by hand.
    expect(valueOf('standby-days', 'days', { capacityAh: 12, idleMa: 20 })).toBeCloseTo(25, 12);
    const tiny = { capacityAh: 12, idleMa: 20, lossPercentPerMonth: 1e-9 };
    expect(valueOf('standby-days', 'days', tiny)).toBeCloseTo(25, 6);
    expect(valueOf('standby-days', 'days', { ...tiny, lossPercentPerMonth: 3 })).toBeLessThan(25);
    expect(evaluate('standby-days', { capacityAh: 12, idleMa: 0 })['days']).toBeNull();
    // Half is gone after a month when half goes in a month.
    const half = { capacityAh: 12, idleMa: 0, lossPercentPerMonth: 50, usablePercent: 50 };
    expect(valueOf('standby-days', 'days', half)).toBeCloseTo(365.25 / 12, 9);
  });
});

describe('charging', () => {
  // 12 A·h, 11.8 -> 12.8 V, R 0.08 Ω, 1.2 A, 12.6 V, tail 0.12 A: 7.040 h + 2.2105 h, 9.4848 A·h [R].
  const linear = {
    capacityAh: 12,
    emptyV: 11.8,
    fullV: 12.8,
    resistanceOhm: 0.08,
    currentA: 1.2,
    endV: 12.6,
    tailA: 0.12,
  };
  it('takes 7.040 h and 2.2105 h in the closed form', () => {
    const charge = evaluate('linear-charge', linear);
    expect(charge['bulkH']).toBeCloseTo(7.04, 9);
    expect(charge['absorptionH']).toBeCloseTo(2.2105, 4);
    expect(charge['chargedAh']).toBeCloseTo(9.4848, 9);
  });
  it('goes straight to constant voltage where the current could never flow', () => {
    // I R = 1.6 V is more than 12.6 - 11.8: starts at 10 A, tau 0.96 h, by hand.
    const charge = evaluate('linear-charge', { ...linear, currentA: 20 });
    expect(charge['bulkH']).toBe(0);
    expect(charge['absorptionH']).toBeCloseTo(0.96 * Math.log(10 / 0.12), 9);
  });
  it('refuses an end voltage beyond a full block and one below an empty one', () => {
    for (const endV of [13.5, 11.5]) {
      expect(evaluateFormula('linear-charge', { ...linear, endV })).toMatchObject({
        ok: false,
        field: 'endV',
      });
    }
  });
  // [P] 14.4 to 14.7 V cyclic, 13.5 to 13.8 V float, 0.30 C per 12 V block; LFP 3.65 V, NMC 4.20 V, no float.
  it('charges a 12 V lead block to 14.4 to 14.7 V and floats it at 13.5 to 13.8 V, and never floats lithium', () => {
    const lead = evaluate('charge-window', { family: 'lead', cellGroups: 6, capacityAh: 12 });
    expect(lead['endLowV']).toBeCloseTo(14.4, 9);
    expect(lead['endHighV']).toBeCloseTo(14.7, 9);
    expect(lead['floatLowV']).toBeCloseTo(13.5, 9);
    expect(lead['floatHighV']).toBeCloseTo(13.8, 9);
    expect(lead['currentHighA']).toBeCloseTo(3.6, 9);
    const lfp = evaluate('charge-window', { family: 'lfp', cellGroups: 8, capacityAh: 20 });
    expect(lfp['endHighV']).toBeCloseTo(29.2, 9);
    expect(lfp).toMatchObject({ floatLowV: null, floatHighV: null, leastTemperatureC: 0 });
  });
  it('tells that 29.4 V fits both 12 lead cells and 7 NMC groups', () => {
    expect(evaluate('charge-voltage-twins', { endV: 29.4 })).toEqual({
      leadCells: 12,
      lfpCells: 0,
      nmcCells: 7,
    });
    expect(evaluate('charge-voltage-twins', { endV: 29.2 })).toMatchObject({ lfpCells: 8 });
    expect(evaluate('charge-voltage-twins', { endV: 1.5 })).toEqual({
      leadCells: 0,
      lfpCells: 0,
      nmcCells: 0,
    });
  });
  it('takes no time when nothing was drawn', () => {
    expect(valueOf('charge-hours', 'chargeH', { drawnAh: 0, currentA: 2 })).toBe(0);
    expect(valueOf('charge-hours', 'chargeH', { drawnAh: 10, currentA: 2 })).toBeCloseTo(7.5, 12);
  });
  // IEC 62485-2: 6 cells, 12 A·h VRLA boost: 0.0288 m³/h, 0.806 cm² [R].
  it('needs 0.0288 m³/h and 0.806 cm² for a 12 A·h sealed block in boost', () => {
    const air = evaluate('ventilation', { construction: 'vrla', cells: 6, capacityAh: 12 });
    expect(air['flowM3PerH']).toBeCloseTo(0.0288, 12);
    expect(air['openingCm2']).toBeCloseTo(0.806, 3);
    const vented = { construction: 'vented', stage: 'float', cells: 6, capacityAh: 12 };
    expect(valueOf('ventilation', 'flowM3PerH', vented)).toBeCloseTo(0.018, 12);
  });
});
