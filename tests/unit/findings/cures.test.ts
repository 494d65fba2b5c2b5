import { describe, expect, test } from 'vitest';
import { applyCure } from '#core/findings/cure.ts';
import type { Finding, FindingId } from '#core/findings/finding.ts';
import { planFindings } from '#core/findings/plan-findings.ts';
import { checkPlan } from '#core/plan/read-plan.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { branchOf } from '../wiring/wired.ts';

const all = (plan: Plan): Finding[] => planFindings(plan, studyPlan(plan).options);

/** What a finding says of whom, without its figures. */
const matter = ({ id, status, optionId, what }: Finding): string =>
  `${id} ${status} ${optionId} ${what.replaceAll(/[\d.]+/g, '#')}`;

/** Plans with something wrong, by the rule that finds it. */
const wrongs: readonly (readonly [name: string, id: FindingId, change: (plan: Plan) => void])[] = [
  ['a branch without a fuse', 'FUS-1', (plan) => (branchOf(plan.wiring!, 'port-line').fuse = null)],
  [
    'a fuse too large for its wire',
    'FUS-1',
    (plan) => (branchOf(plan.wiring!, 'supply').conductor = { system: 'metric', areaMm2: 1.5 }),
  ],
  ['a fuse too small', 'FUS-1', (plan) => (branchOf(plan.wiring!, 'main').fuse!.ratedA = 5)],
  [
    'a fuse for too few volts',
    'FUS-1',
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.ratedVoltageV = 12),
  ],
  [
    'a fuse that cannot break the short circuit',
    'FUS-1',
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.breakingA = 50),
  ],
  [
    'a fuse far from its source',
    'FUS-2',
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.fromSourceMm = 900),
  ],
  [
    'a breaker that closes by itself',
    'FUS-4',
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.class = 'breaker-auto-reset'),
  ],
  [
    'a wire far too thin',
    'WIR-1',
    (plan) =>
      Object.assign(branchOf(plan.wiring!, 'main'), {
        conductor: { system: 'metric', areaMm2: 0.5 },
        bundled: 24,
      }),
  ],
  ['a wire not known', 'WIR-1', (plan) => (branchOf(plan.wiring!, 'main').conductor = null)],
  ['a long way', 'WIR-2', (plan) => (branchOf(plan.wiring!, 'supply').lengthM = 8)],
  [
    'a motor line sized for the battery current',
    'WIR-3',
    (plan) => {
      plan.machine.controller.motorCurrentLimitA = 90;
      plan.machine.controller.batteryCurrentLimitA = 30;
    },
  ],
  [
    'contacts that meet empty capacitors',
    'WIR-5',
    (plan) => {
      plan.wiring!.devices.find(({ kind }) => kind === 'controller')!.inputCapacitanceUf = 4700;
      const gear = branchOf(plan.wiring!, 'main').switchgear!;
      gear.prechargeOhm = null;
    },
  ],
  ['strings without a fuse each', 'PCK-3', (plan) => (plan.options[2]!.pack.stringFuseA = null)],
  [
    'a controller stronger than the BMS',
    'PCK-5',
    (plan) => (plan.machine.controller.batteryCurrentLimitA = 400),
  ],
  ['no cutoff', 'CUT-1', (plan) => (plan.machine.controller.cutoffVoltageV = null)],
  ['a cutoff below the BMS', 'CUT-3', (plan) => (plan.machine.controller.cutoffVoltageV = 15)],
  [
    'a charger for another chemistry',
    'CHG-1',
    (plan) => (plan.options[0]!.charger!.chemistries = ['nmc']),
  ],
  ['no charger', 'CHG-1', (plan) => (plan.options[0]!.charger = null)],
  ['a charger that ends too low', 'CHG-2', (plan) => (plan.options[0]!.charger!.endVoltageV = 27)],
  ['a charger too strong', 'CHG-3', (plan) => (plan.options[0]!.charger!.currentA = 12)],
  ['a charger for one block', 'CHG-5', (plan) => (plan.options[0]!.charger!.cellGroups = 6)],
  [
    'an accessory at the middle',
    'SUP-4',
    (plan) => (plan.machine.accessories[0]!.supply = 'mid-point'),
  ],
  ['charging where people sleep', 'CHG-7', (plan) => (plan.week!.place.kind = 'sleeping-room')],
];

describe('a cure takes its finding away', () => {
  test.each(wrongs)('%s (%s)', (_name, id, change) => {
    const plan = samplePlan('orchard-cart');
    change(plan);
    const before = all(plan).filter((finding) => finding.id === id && finding.cures.length > 0);
    expect(before, 'the rule finds it and offers a cure').not.toEqual([]);
    for (const finding of before) {
      for (const cure of finding.cures) {
        const mended = structuredClone(plan);
        applyCure(mended, cure);
        const checked = checkPlan(mended);
        expect(checked.ok ? null : checked.problem.problem, cure.does).toBeNull();
        const left = all(mended).map(matter);
        expect(left, cure.does).not.toContain(matter(finding));
      }
    }
  });
});

test('every cure is worded in both languages, names old and new, and changes what it says', () => {
  for (const [, , change] of wrongs) {
    const plan = samplePlan('orchard-cart');
    change(plan);
    const studies = studyPlan(plan).options;
    const english = planFindings(plan, studies, 'en').flatMap(({ cures }) => cures);
    const german = planFindings(plan, studies, 'de').flatMap(({ cures }) => cures);
    expect(german.map(({ changes }) => changes)).toEqual(english.map(({ changes }) => changes));
    german.forEach((cure, index) => expect(cure.does).not.toBe(english[index]!.does));
    for (const cure of english) {
      const mended = structuredClone(plan);
      applyCure(mended, cure);
      expect(mended, cure.does).not.toEqual(plan);
    }
  }
});

test('a setting of a controller that options share is changed for the option in question only', () => {
  const plan = samplePlan('orchard-cart');
  plan.machine.controller.cutoffVoltageV = 15;
  const cure = all(plan).find(({ id }) => id === 'CUT-3')!.cures[0]!;
  const mended = structuredClone(plan);
  applyCure(mended, cure);
  expect(mended.machine).toEqual(plan.machine);
  expect(mended.options.filter(({ controller }) => controller !== null)).toHaveLength(1);
});
