import { describe, expect, test } from 'vitest';
import {
  conductorAmpacityA,
  conductorAreaMm2,
  conductorOhmPerKm,
  formatConductor,
  standardConductors,
} from '#core/wiring/index.ts';
import { heatingTimeS, settledTemperatureC } from '#core/wiring/wire-heating.ts';
import { fuseOpening } from '#core/wiring/fuse-opening.ts';
import { fuseClasses } from '#core/wiring/fuse-classes.ts';
import { chooseFuse } from '#core/wiring/choose-fuse.ts';
import { smallestConductor, type SizingDemand } from '#core/wiring/smallest-conductor.ts';
import { newBranch, newFuse } from '#core/wiring/new-parts.ts';

describe('conductors', () => {
  test('a metric size between gauges gets the ampacity of the thinner gauge', () => {
    // 16 mm² holds 6 AWG (13.3 mm²) but not 4 AWG (21.2 mm²): 95 A at 75 °C in 33 CFR 183.425.
    expect(conductorAmpacityA({ system: 'metric', areaMm2: 16 }, 75, 1, 30)).toBe(95);
    expect(conductorAmpacityA({ system: 'awg', gauge: 6 }, 75, 1, 30)).toBe(95);
  });

  test('bundling and warm surroundings lower what a wire carries', () => {
    const wire = { system: 'awg', gauge: 10 } as const;
    expect(conductorAmpacityA(wire, 105, 3, 30)).toBeCloseTo(60 * 0.7, 9);
    expect(conductorAmpacityA(wire, 105, 1, 50)).toBeCloseTo(60 * Math.sqrt(55 / 75), 9);
  });

  test('every size made is thicker, carries more and resists less than the one before', () => {
    for (const system of ['metric', 'awg'] as const) {
      const sizes = standardConductors(system);
      for (let index = 1; index < sizes.length; index += 1) {
        expect(conductorAreaMm2(sizes[index]!)).toBeGreaterThan(
          conductorAreaMm2(sizes[index - 1]!),
        );
        expect(conductorOhmPerKm(sizes[index]!, 20)).toBeLessThan(
          conductorOhmPerKm(sizes[index - 1]!, 20),
        );
        expect(conductorAmpacityA(sizes[index]!, 75, 1, 30)).toBeGreaterThanOrEqual(
          conductorAmpacityA(sizes[index - 1]!, 75, 1, 30),
        );
      }
    }
  });

  test('sizes are written as on the reel', () => {
    expect(formatConductor({ system: 'awg', gauge: -1 }, 'en')).toBe('2/0 AWG');
    expect(formatConductor({ system: 'metric', areaMm2: 1.5 }, 'de')).toBe('1,5 mm²');
  });
});

describe('heating of a wire', () => {
  const wire = { ohmPerM20: 0.00798, areaMm2: 2.5, ampacityA: 25, ratedC: 75, ambientC: 30 };

  test('the ampacity settles at the rated temperature', () => {
    expect(settledTemperatureC(wire, 25)).toBeCloseTo(75, 6);
    expect(settledTemperatureC(wire, 0)).toBeCloseTo(30, 9);
  });

  test('the ampacity never gets it past the rated temperature, a little more does', () => {
    expect(heatingTimeS(wire, 25, 30, 75.1)).toBeNull();
    expect(heatingTimeS(wire, 27, 30, 75)).toBeGreaterThan(60);
  });

  test('a runaway overload is capped instead of infinite', () => {
    expect(settledTemperatureC(wire, 5000)).toBe(1000);
  });
});

describe('fuses', () => {
  test('the gates of every class come back at their multiples', () => {
    for (const [name, data] of Object.entries(fuseClasses)) {
      const fuse = newFuse(name as keyof typeof fuseClasses, 40);
      for (const gate of data.gates) {
        const band = fuseOpening(fuse, 40 * gate.times);
        expect(band.earliestS).toBeCloseTo(gate.earliestS, 9);
        expect(band.latestS).toBeCloseTo(gate.latestS, 9);
      }
    }
  });

  test('more current never opens a fuse later', () => {
    for (const name of Object.keys(fuseClasses)) {
      const fuse = newFuse(name as keyof typeof fuseClasses, 30);
      let before = fuseOpening(fuse, 33.5);
      for (let times = 1.13; times < 30; times *= 1.05) {
        const now = fuseOpening(fuse, 30 * times);
        expect(now.earliestS).toBeLessThanOrEqual(before.earliestS);
        expect(now.latestS).toBeLessThanOrEqual(before.latestS);
        expect(now.earliestS).toBeLessThanOrEqual(now.latestS);
        before = now;
      }
    }
  });

  test('a fuse is chosen for lasting current, limit, start, voltage and short circuit', () => {
    const wish = {
      continuousA: 12,
      limitA: 35,
      startA: 35,
      startS: 3,
      voltageV: 29.4,
      faultA: 800,
      margin: 1.25,
    };
    expect(chooseFuse(wish)).toMatchObject({ class: 'blade', ratedA: 40, ratedVoltageV: 32 });
    expect(chooseFuse({ ...wish, faultA: 1001 })).toMatchObject({ class: 'bolt-down', ratedA: 40 });
    expect(chooseFuse({ ...wish, faultA: 5000 })).toMatchObject({ class: 'high-breaking' });
    expect(chooseFuse({ ...wish, voltageV: 500 })).toBeNull();
  });
});

describe('the smallest conductor', () => {
  const branch = { ...newBranch('b', 'Branch', 'x', 'y', 1), insulationC: 75 as const };
  const demand: SizingDemand = {
    continuousA: 20,
    dropA: 20,
    guard: null,
    faultA: 0,
    zoneV: 24,
    dropPercent: 3,
    ambientC: 30,
  };

  test('a short line is decided by its current', () => {
    expect(smallestConductor({ ...branch, lengthM: 0.3 }, 'awg', demand)).toMatchObject({
      conductor: { gauge: 14 },
      reason: 'current',
    });
  });

  test('a long line is decided by the drop', () => {
    // 2 x 6 m x 20 A in 3 % of 24 V leaves 3 mΩ/m: 10 AWG at 75 °C has 4.07, 8 AWG 2.55.
    expect(smallestConductor({ ...branch, lengthM: 6 }, 'awg', demand)).toMatchObject({
      conductor: { gauge: 8 },
      reason: 'drop',
    });
  });

  test('a large fuse decides where it is above what the current needs', () => {
    const guarded = { ...demand, guard: newFuse('bolt-down', 60) };
    expect(smallestConductor({ ...branch, lengthM: 0.3 }, 'awg', guarded)).toMatchObject({
      conductor: { gauge: 8 },
      reason: 'fuse',
    });
  });

  test('a slow breaker on a hard short decides by the fault', () => {
    const slow = {
      ...demand,
      continuousA: 4,
      dropA: 4,
      guard: newFuse('breaker-manual', 5),
      faultA: 900,
    };
    const found = smallestConductor({ ...branch, lengthM: 0.3 }, 'metric', slow);
    expect(found.reason).toBe('fault');
    expect(found.conductor).toMatchObject({ areaMm2: 0.75 });
  });

  test('a tiny load gets the thinnest wire made, and says so', () => {
    expect(
      smallestConductor({ ...branch, lengthM: 0.2 }, 'metric', {
        ...demand,
        continuousA: 0.2,
        dropA: 0.2,
      }).reason,
    ).toBe('thinnest-made');
  });

  test('a demand beyond every size made has no answer', () => {
    expect(
      smallestConductor(branch, 'metric', { ...demand, continuousA: 5000 }).conductor,
    ).toBeNull();
  });
});
