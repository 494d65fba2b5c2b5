import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { WiringBranch, WiringDevice } from '#core/plan/schema/wiring-branch.ts';
import type { Wiring } from '#core/plan/schema/wiring.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { checkPlan } from '#core/plan/read-plan.ts';
import { runOuting } from '#core/run/run-outing.ts';
import {
  commissioningSteps,
  coordinate,
  diagramOf,
  newBranch,
  newDevice,
  newFuse,
  studyWiring,
  wiringRecord,
  wiringStates,
} from '#core/wiring/index.ts';
import { solveNetwork } from '#core/wiring/network.ts';

const plan = samplePlan('orchard-cart');
const option = plan.options[0]!;
const outing = plan.outings[0]!;
const run = runOuting(option, plan.machine, outing);

const kinds: WiringDevice['kind'][] = [
  'string',
  'pack',
  'mid-point',
  'junction',
  'controller',
  'motor',
  'brake-resistor',
  'converter',
  'accessory',
  'charge-port',
];

/** Any wiring the schema allows, sensible or not: loops, islands, two controllers, no pack. */
const anyWiring: fc.Arbitrary<Wiring> = fc
  .record({
    kinds: fc.array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 8 }),
    branches: fc.array(
      fc.record({
        from: fc.nat(7),
        to: fc.nat(7),
        lengthM: fc.double({ min: 0, max: 100, noNaN: true }),
        areaMm2: fc.option(fc.constantFrom(0.5, 2.5, 16, 240)),
        fuseA: fc.option(fc.double({ min: 0.1, max: 2000, noNaN: true })),
        bundled: fc.integer({ min: 1, max: 24 }),
        surroundingC: fc.option(fc.double({ min: -30, max: 100, noNaN: true })),
      }),
      { maxLength: 10 },
    ),
  })
  .map(({ kinds: chosen, branches }) => ({
    devices: chosen.map((kind, index) => ({
      ...newDevice(`d${index}`, kind, `Device ${index}`),
      accessoryId: kind === 'accessory' ? 'radio' : null,
      resistanceOhm: kind === 'motor' ? 0.2 : null,
    })),
    branches: branches.flatMap((entry, index): WiringBranch[] => {
      const from = entry.from % chosen.length;
      const to = entry.to % chosen.length;
      if (from === to) return [];
      return [
        {
          ...newBranch(`b${index}`, `Branch ${index}`, `d${from}`, `d${to}`, entry.lengthM),
          conductor: entry.areaMm2 === null ? null : { system: 'metric', areaMm2: entry.areaMm2 },
          bundled: entry.bundled,
          surroundingC: entry.surroundingC,
          fuse: entry.fuseA === null ? null : newFuse('blade', entry.fuseA),
        },
      ];
    }),
    chargeInhibit: 'unknown',
    portPolarity: 'unknown',
    startSeconds: 3,
    register: [],
    readings: [],
  }));

test('any wiring the plan allows is worked out, drawn and listed without a missing or endless number', () => {
  fc.assert(
    fc.property(anyWiring, (wiring) => {
      expect(checkPlan({ ...plan, wiring }).ok).toBe(true);
      const study = studyWiring(plan, wiring, option, run, outing.ambientC);
      const finite = (_key: string, value: unknown): unknown => {
        if (typeof value === 'number' && !Number.isFinite(value)) throw new Error('not finite');
        return value;
      };
      JSON.stringify(wiringRecord(study), finite);
      JSON.stringify(
        wiring.branches.map((branch) => coordinate(study, branch, 3, 'en')),
        finite,
      );
      JSON.stringify(commissioningSteps(plan, wiring, option, study, 'de'), finite);
      for (const state of wiringStates) {
        const diagram = diagramOf(study, state, 'en');
        expect(diagram.width).toBeGreaterThan(0);
        expect(JSON.stringify(diagram)).not.toMatch(/NaN|Infinity/);
      }
    }),
    { numRuns: 120 },
  );
});

test('in any network the sources give what loads take and paths turn to heat, to a millionth', () => {
  const network = fc.record({
    ohms: fc.array(fc.double({ min: 1e-3, max: 1, noNaN: true }), { minLength: 2, maxLength: 6 }),
    currents: fc.array(fc.double({ min: 0, max: 20, noNaN: true }), {
      minLength: 6,
      maxLength: 6,
    }),
  });
  fc.assert(
    fc.property(network, ({ ohms, currents }) => {
      const paths = ohms.map((resistanceOhm, index) => ({
        from: Math.floor(index / 2),
        to: index + 1,
        resistanceOhm,
      }));
      const loads = ohms.map((_, index) => ({
        node: index + 1,
        currentA: currents[index] ?? 0,
        powerW: 0,
        conductanceS: 0.05,
      }));
      const solved = solveNetwork({
        nodeCount: ohms.length + 1,
        paths,
        sources: [{ node: 0, emfV: 50, resistanceOhm: 0.01 }],
        loads,
      });
      if (!solved.ok) throw new Error('a network without powers always has a solution');
      const { voltageV, pathCurrentA, sourceCurrentA } = solved;
      const given = voltageV[0]! * sourceCurrentA[0]!;
      const heat = paths.reduce(
        (sum, path, index) => sum + pathCurrentA[index]! ** 2 * path.resistanceOhm,
        0,
      );
      const taken = loads.reduce(
        (sum, load) =>
          sum + voltageV[load.node]! * (load.currentA + load.conductanceS * voltageV[load.node]!),
        0,
      );
      expect(Math.abs(given - heat - taken)).toBeLessThan(1e-6 * (1 + Math.abs(given)) + 1e-4);
    }),
  );
});
