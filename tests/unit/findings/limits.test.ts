import { expect, test } from 'vitest';
import { limitGroups } from '#core/findings/limits.ts';
import { planFindings } from '#core/findings/plan-findings.ts';
import { everyRule, ruleStates } from '#core/findings/rule-list.ts';
import type { Rule } from '#core/findings/rule.ts';
import { defaultThresholds } from '#core/plan/defaults.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { setValueAt } from '#core/plan/set-value-at.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import type { OptionStudy } from '#core/study/study.ts';

const limits = limitGroups.flatMap((group) => group.limits);

function leaves(value: object, path = ''): string[] {
  return Object.entries(value).flatMap(([key, inner]: [string, unknown]) =>
    typeof inner === 'object' && inner !== null
      ? leaves(inner, `${path}${key}.`)
      : [`${path}${key}`],
  );
}

test('every limit of the plan is shown once, and nothing else is', () => {
  expect(limits.map(({ path }) => path).toSorted()).toEqual(leaves(defaultThresholds).toSorted());
});

test('every limit is asked by rules that exist', () => {
  const ids = new Set(everyRule.map(({ id }) => id));
  for (const { path, rules } of limits) {
    expect(rules.length, path).toBeGreaterThan(0);
    for (const id of rules) expect(ids.has(id), `${path}: ${id}`).toBe(true);
  }
});

/** Both ends of each limit, far from its usual value. */
const ends: Readonly<Record<string, readonly [number, number]>> = {
  restDifferenceNoteV: [0, 2],
  restDifferenceWarnV: [0, 2],
  restDifferenceStopV: [0, 3],
  'pack.capacityNotePercent': [0, 50],
  'pack.capacityWarnPercent': [0, 80],
  'pack.ageApartYears': [0, 20],
  'pack.joiningPerAh': [0.01, 5],
  sagLeftPercent: [1, 90],
  promisePercent: [1, 200],
  leadCyclicVoltPerBlock: [13.8, 15],
  endVoltageTolerancePercent: [0.1, 5],
  'charge.leadLowPerAh': [0, 1],
  'charge.leadHighPerAh': [0.05, 2],
  'charge.lithiumHighPerAh': [0.05, 5],
  'charge.lithiumColdC': [-30, 15],
  'charge.leadFreezesC': [-60, 0],
  'charge.leadFlatPercent': [5, 90],
  'charge.leadFullDays': [1, 60],
  converterLoadPercent: [10, 100],
  standbyDays: [0, 400],
  'drive.overvoltageWarn': [1, 3],
  'drive.overvoltageStop': [1, 5],
  'drive.gentleRampS': [0, 10],
  'drive.brakeMps2': [0.5, 9],
  'drive.nearlyFullPercent': [50, 100],
  'wiring.fuseMargin': [1, 3],
  'wiring.fuseDistanceMm': [10, 5000],
  'wiring.motorOverloadFactor': [1, 5],
  'wiring.ampacityStopFactor': [1, 3],
  'wiring.dropNotePercent': [0.5, 20],
  'wiring.dropWarnPercent': [0.5, 30],
  'wiring.jointWarnMohm': [0.05, 100],
  'care.leadTopUpDays': [7, 365],
  'care.leadStoragePercent': [20, 100],
  'care.lithiumStorageLowPercent': [5, 100],
  'care.lithiumStorageHighPercent': [20, 100],
  'care.seasons': [0, 50],
};

/** Plans in which something lies near every limit. */
function plans(): Plan[] {
  const orchard = samplePlan('orchard-cart');
  const [pair, lithium, strings] = orchard.options as [
    Plan['options'][number],
    Plan['options'][number],
    Plan['options'][number],
  ];
  const blank = {
    capacityPercent: 100,
    resistancePercent: 100,
    startPercent: null,
    replacement: null,
  };
  pair.pack.differences = [
    { ...blank, string: 1, position: 1, capacityPercent: 80, restVoltageV: 12.7, ageYears: 3 },
    { ...blank, string: 1, position: 2, restVoltageV: 12.4, ageYears: 0 },
  ];
  strings.pack.differences = [1, 2].flatMap((string) =>
    [1, 2].map((position) => ({
      ...blank,
      string,
      position,
      restVoltageV: string === 1 ? 12.75 : 12.73,
      ageYears: 0,
    })),
  );
  for (const { pack } of [pair, lithium, strings]) pack.block.maximumChargeA = null;
  pair.charger!.endVoltageV = 27.5;
  const { wiring } = orchard;
  wiring!.branches[1]!.joints = [{ name: 'Lug', dropMv: 20, atCurrentA: 10 }];
  wiring!.branches[2]!.conductor = { system: 'metric', areaMm2: 0.5 };
  wiring!.branches[2]!.lengthM = 4;
  wiring!.branches[2]!.bundled = 24;
  const cold = samplePlan('orchard-cart');
  for (const outing of cold.outings) outing.ambientC = -12;
  cold.week!.isolatedWhenParked = false;
  cold.week!.season.weeks = 4;
  cold.thresholds.care.lithiumStorageHighPercent = 20;
  cold.thresholds.charge.leadFlatPercent = 90;
  cold.options[0]!.pack.differences = pair.pack.differences.map((entry) => ({
    ...entry,
    restVoltageV: 12.6 + 0.08 * entry.position,
  }));
  const tug = samplePlan('campsite-tug');
  tug.machine.controller.motorCurrentLimitA = null;
  tug.machine.controller.batteryCurrentLimitA = null;
  tug.machine.drive!.brakes.onRelease = 'short';
  tug.machine.drive!.motor.ratedVoltageV = 16;
  for (const option of tug.options) {
    option.controller = null;
  }
  tug.machine.controller.control = {
    ...tug.machine.controller.control!,
    kind: 'pwm',
    rampUpS: 1,
  };
  const feeding = samplePlan('campsite-tug');
  feeding.machine.drive!.brakes.onRelease = 'regeneration';
  feeding.machine.controller.motorCurrentLimitA = null;
  for (const option of feeding.options) {
    option.startPercent = 80;
    option.pack.block.bms = null;
  }
  return [orchard, cold, tug, feeding, samplePlan('market-scooter')];
}

const said = (plan: Plan, studies: readonly OptionStudy[], table: readonly Rule[]): string =>
  JSON.stringify(planFindings(plan, studies, 'en', plan.headlineOuting, table));

test('shifting any limit changes what the rules say', { timeout: 120_000 }, () => {
  const some = plans().map((plan) => ({ plan, studies: studyPlan(plan).options }));
  const idle = limits.filter(({ path, rules }) =>
    some.every(({ plan, studies }) => {
      const [low, high] = ends[path]!.map((value) => {
        const shifted = structuredClone(plan);
        setValueAt(shifted.thresholds, path, value);
        const table = everyRule.filter(({ id }) => rules.includes(id));
        return said(shifted, studies, table);
      });
      return low === high;
    }),
  );
  expect(idle.map(({ path }) => path)).toEqual([]);
});

test('the list of rules tells what stands, what could not be checked and what found nothing', () => {
  const plan = samplePlan('orchard-cart');
  const states = ruleStates(studyPlan(plan).findings, 'en');
  expect(new Set(states.map(({ id }) => id)).size).toBe(everyRule.length);
  const of = (id: string) => states.find((state) => state.id === id);
  expect(of('RUN-1')).toMatchObject({ state: 'stands', worst: 'warn' });
  expect(of('FUS-1')).toMatchObject({ state: 'clear', worst: null });
  expect(of('PCK-4')).toMatchObject({ state: 'not-checked', worst: null });
});
