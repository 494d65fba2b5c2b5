import { describe, expect, test } from 'vitest';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { runOuting } from '#core/run/run-outing.ts';
import {
  coordinate,
  diagramOf,
  diagramSvg,
  prefillWiring,
  studyWiring,
  wiringRecord,
  wiringStates,
} from '#core/wiring/index.ts';
import { newFuse } from '#core/wiring/new-parts.ts';
import { branchOf, wiredSample } from './wired.ts';

const cart = (change?: Parameters<typeof wiredSample>[2]) =>
  wiredSample('orchard-cart', 'agm-series', change);
const found = ({ study }: ReturnType<typeof cart>, id: string) =>
  study.branches.find((branch) => branch.id === id)!;

describe('the wiring worked out', () => {
  test('in every state the current into each inner node is the current out of it', () => {
    const { study } = cart();
    for (const solution of Object.values(study.states)) {
      if (solution === null) continue;
      const bus = study.topology.inputNode.get('bus')!;
      const sum = study.topology.branches.reduce(
        (total, entry, index) =>
          total +
          (entry.to === bus ? solution.currentA[index]! : 0) -
          (entry.from === bus ? solution.currentA[index]! : 0),
        0,
      );
      expect(Math.abs(sum)).toBeLessThan(1e-6);
    }
  });

  test('start and stall stay within the limits of the controller, the motor line carries the motor limit', () => {
    const wired = cart();
    expect(found(wired, 'supply').states.start!.currentA).toBeCloseTo(35.06, 6);
    expect(found(wired, 'motor-line').states.start!.currentA).toBeCloseTo(60, 6);
    // 60 A through 0.16 Ω is 576 W; at the bus voltage of the stall that is the battery current.
    const { study } = wired;
    expect(study.demand.stall!.motorA).toBe(60);
    expect(study.demand.stall!.batteryA * (study.supply.fullV - 60 * 0.04)).toBeGreaterThan(
      0.9 * 576,
    );
  });

  test('charging current flows towards the pack and nowhere else', () => {
    const wired = cart();
    expect(found(wired, 'port-line').states.charge).toMatchObject({ towardsPack: true });
    expect(found(wired, 'port-line').states.charge!.currentA).toBeCloseTo(3, 6);
    expect(found(wired, 'supply').states.charge!.currentA).toBe(0);
  });

  test('two strings share the current of the links', () => {
    const wired = wiredSample('orchard-cart', 'agm-two-strings');
    const total = found(wired, 'main').states.cruising!.currentA;
    expect(found(wired, 'links').states.cruising!.currentA).toBeCloseTo(total / 2, 6);
  });

  test('a thicker wire drops less, a longer one more', () => {
    const usual = found(cart(), 'motor-line').states.start!.dropV;
    const thick = found(
      cart((_plan, wiring) => {
        branchOf(wiring, 'motor-line').conductor = { system: 'metric', areaMm2: 25 };
      }),
      'motor-line',
    ).states.start!.dropV;
    const long = found(
      cart((_plan, wiring) => {
        branchOf(wiring, 'motor-line').lengthM = 2.8;
      }),
      'motor-line',
    ).states.start!.dropV;
    expect(thick).toBeLessThan(usual / 2);
    // Longer runs no warmer here, so the drop doubles.
    expect(long / usual).toBeCloseTo(2, 2);
  });

  test('a short circuit drives less the farther away it is', () => {
    const wired = cart();
    expect(found(wired, 'main').faultNearA).toBeGreaterThan(found(wired, 'main').faultFarA);
    expect(found(wired, 'main').faultFarA).toBeCloseTo(found(wired, 'supply').faultNearA, 6);
  });

  test('a wire that nobody knows is counted as the one that would do, and marked', () => {
    const wired = cart((_plan, wiring) => {
      branchOf(wiring, 'supply').conductor = null;
    });
    expect(found(wired, 'supply').conductorAssumed).toBe(true);
    expect(found(wired, 'supply').conductor).toEqual(found(wired, 'supply').smallest.conductor);
  });

  test('unknown windings and limits leave the stall out instead of guessing it', () => {
    const { study } = cart((plan, wiring) => {
      wiring.devices.find((device) => device.id === 'motor')!.resistanceOhm = null;
      plan.machine.controller.motorCurrentLimitA = null;
      plan.machine.controller.batteryCurrentLimitA = null;
    });
    expect(study.states.stall).toBeNull();
    expect(study.demand.runawayA).toBeNull();
  });

  test('no figure of the record is missing or endless', () => {
    for (const name of sampleNames) {
      const plan = samplePlan(name);
      for (const option of plan.options) {
        const { study } = wiredSample(name, option.id);
        const text = JSON.stringify(wiringRecord(study), (_key, value: unknown) => {
          if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
          return value;
        });
        expect(text).toContain('ampacityA');
      }
    }
  });

  test('an option is worked out in less than 20 ms when the machine has nothing else to do', () => {
    const { plan, wiring, option, run, ambientC } = cart();
    const times = Array.from({ length: 20 }, () => {
      const begin = performance.now();
      studyWiring(plan, wiring, option, run, ambientC);
      return performance.now() - begin;
    });
    expect(Math.min(...times)).toBeLessThan(20);
  });
});

describe('the proposed wiring', () => {
  test('passes its own checks: every branch guarded, carried and within the drop', () => {
    for (const name of sampleNames) {
      const plan = samplePlan(name);
      const outing = plan.outings[0]!;
      for (const option of plan.options) {
        const run = runOuting(option, plan.machine, outing);
        const wiring = prefillWiring(plan, option, run, outing.ambientC);
        const study = studyWiring(plan, wiring, option, run, outing.ambientC);
        for (const branch of study.branches) {
          expect(branch.conductorAssumed, `${name} ${branch.id}`).toBe(false);
          expect(branch.ampacityA, `${name} ${branch.id}`).toBeGreaterThanOrEqual(branch.sizingA);
          if (branch.guard !== null)
            expect(branch.ampacityA, `${name} ${branch.id}`).toBeGreaterThanOrEqual(
              branch.guard.fuse.ratedA,
            );
          expect(branch.areaMm2 * 1.02, `${name} ${branch.id}`).toBeGreaterThanOrEqual(
            branch.faultAreaMm2,
          );
        }
      }
    }
  });

  test('knows the brake resistor, the accessories and the charge port of the plan', () => {
    const plan = samplePlan('campsite-tug');
    const option = plan.options[0]!;
    const wiring = prefillWiring(
      plan,
      option,
      runOuting(option, plan.machine, plan.outings[0]!),
      20,
    );
    const kinds = wiring.devices.map((device) => device.kind);
    expect(kinds.filter((kind) => kind === 'accessory')).toHaveLength(
      plan.machine.accessories.length,
    );
    expect(kinds).toContain('brake-resistor');
    expect(kinds).toContain('charge-port');
  });
});

describe('coordination', () => {
  test('a fuse below the wire lies left of it and holds the start', () => {
    const { study, wiring } = cart();
    const chart = coordinate(study, branchOf(wiring, 'main'), wiring.startSeconds, 'en')!;
    expect(chart.readings[0]!.verdict).toBe('good');
    expect(chart.readings.find((reading) => reading.text.startsWith('The start'))!.verdict).toBe(
      'good',
    );
  });

  test('a large slow breaker on a thin wire is read as a stop', () => {
    const { study, wiring } = cart((_plan, all) => {
      branchOf(all, 'main').conductor = { system: 'metric', areaMm2: 0.75 };
      branchOf(all, 'main').fuse = newFuse('breaker-manual', 100);
    });
    const chart = coordinate(study, branchOf(wiring, 'main'), wiring.startSeconds, 'en')!;
    expect(chart.readings[0]!.verdict).toBe('stop');
    expect(chart.readings[0]!.text).toContain('before the 100 A fuse surely opens');
  });

  test('a fast small fuse is read as opening at every start', () => {
    const { study, wiring } = cart((_plan, all) => {
      branchOf(all, 'main').fuse = newFuse('glass', 8);
    });
    const chart = coordinate(study, branchOf(wiring, 'main'), wiring.startSeconds, 'de')!;
    expect(chart.readings.some((reading) => reading.text.includes('öffnet bei jedem Anlauf'))).toBe(
      true,
    );
  });

  test('curves fall from left to right and stay inside the frame', () => {
    const { study, wiring } = cart();
    const chart = coordinate(study, branchOf(wiring, 'main'), wiring.startSeconds, 'en')!;
    for (const curve of [chart.fuseEarliest, chart.fuseLatest, chart.wireRated, chart.wireHarmed]) {
      expect(curve.length).toBeGreaterThan(3);
      for (let index = 1; index < curve.length; index += 1) {
        expect(curve[index]!.timeS).toBeLessThanOrEqual(curve[index - 1]!.timeS * (1 + 1e-9));
      }
    }
  });

  test('a branch without a fuse has no chart', () => {
    const { study, wiring } = cart();
    expect(coordinate(study, branchOf(wiring, 'supply'), 3, 'en')).toBeNull();
  });
});

describe('the one-line diagram', () => {
  test('draws every branch and device once, in every state, with no two texts on one spot', () => {
    for (const name of sampleNames) {
      const { study } = wiredSample(name, samplePlan(name).options[0]!.id);
      for (const state of wiringStates) {
        const diagram = diagramOf(study, state, 'en');
        const ids = diagram.targets.map((target) => `${target.kind} ${target.id}`);
        expect(new Set(ids).size).toBe(
          study.topology.devices.length + study.topology.branches.length,
        );
        const places = diagram.shapes.flatMap((shape) =>
          shape.kind === 'text' && shape.text !== '' ? [`${shape.x},${shape.y}`] : [],
        );
        expect(new Set(places).size).toBe(places.length);
        for (const shape of diagram.shapes) {
          if (shape.kind !== 'text') continue;
          expect(shape.x).toBeGreaterThanOrEqual(0);
          expect(shape.x).toBeLessThanOrEqual(diagram.width);
        }
      }
    }
  });

  test('becomes an SVG document in which names are escaped', () => {
    const { study } = cart((_plan, wiring) => {
      branchOf(wiring, 'main').name = 'A <b> & "c"';
    });
    const svg = diagramSvg(diagramOf(study, 'cruising', 'en'), 'Cart & more');
    expect(svg).toContain('<title>Cart &#38; more</title>');
    expect(svg).not.toContain('<b>');
    expect(svg.endsWith('</svg>\n')).toBe(true);
  });
});
