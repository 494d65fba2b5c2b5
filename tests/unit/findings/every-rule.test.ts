import { describe, expect, test } from 'vitest';
import type { Finding, FindingId, Severity } from '#core/findings/finding.ts';
import { planFindings } from '#core/findings/plan-findings.ts';
import { everyRule } from '#core/findings/rule-list.ts';
import { newDifference } from '#core/plan/defaults.ts';
import { newBrakeResistor } from '#core/plan/drive-defaults.ts';
import { resolvePath } from '#core/plan/field-docs.ts';
import type { Language } from '#core/plan/language.ts';
import type { SampleName } from '#core/plan/samples/index.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { RunResult } from '#core/run/result.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import type { OptionStudy } from '#core/study/study.ts';
import { branchOf } from '../wiring/wired.ts';
import { planWith } from './plan-with.ts';

type Change = (plan: Plan, option: Option) => void;

/** Figures of the run put in place, where a rule must meet exact numbers. */
interface Figures {
  readonly run?: Partial<RunResult>;
  readonly study?: Partial<OptionStudy>;
}

interface Case {
  readonly id: FindingId;
  readonly severity: Severity;
  readonly sample: SampleName;
  readonly option: string;
  /** Just beyond the limit, and just within it. */
  readonly beyond: Change;
  readonly within: Change;
  readonly figures?: { readonly beyond: Figures; readonly within: Figures };
}

const nothing: Change = () => {};

const cart = (
  id: FindingId,
  severity: Severity,
  beyond: Change,
  within: Change = nothing,
  option = 'agm-series',
): Case => ({ id, severity, sample: 'orchard-cart', option, beyond, within });
const tug = (
  id: FindingId,
  severity: Severity,
  beyond: Change,
  within: Change = nothing,
  option = 'lead-24',
): Case => ({ id, severity, sample: 'campsite-tug', option, beyond, within });
/** The same figures of the run on both sides of the limit. */
const withRun = (entry: Case, figures: Partial<RunResult>): Case => ({
  ...entry,
  figures: { beyond: { run: figures }, within: { run: figures } },
});
const run = (id: FindingId, severity: Severity, beyond: Figures, within: Figures): Case => ({
  ...cart(id, severity, nothing),
  figures: { beyond, within },
});

const controllerOf = (plan: Plan, option: Option) => option.controller ?? plan.machine.controller;
const chain =
  (changes: object): Change =>
  (plan) =>
    Object.assign(plan.machine.drive!.stopChain, changes);
const pair =
  (restVoltageV: number): Change =>
  (_plan, { pack }) => {
    pack.differences = [
      { ...newDifference(1, 1), restVoltageV: 12.8 },
      { ...newDifference(1, 2), restVoltageV },
    ];
  };
const strings =
  (apartV: number): Change =>
  (_plan, { pack }) => {
    pack.block.resistanceOhm = 0.017;
    pack.linkResistanceOhm = 0.002;
    pack.differences = [1, 2].flatMap((string) =>
      [1, 2].map((position) => ({
        ...newDifference(string, position),
        restVoltageV: 12.8 - (string === 2 ? apartV / 2 : 0),
      })),
    );
  };
const reading =
  (value: number): Change =>
  (plan) => {
    plan.wiring!.readings = [{ step: 'pack-voltage', value, passed: null, note: '' }];
  };

const breaking =
  (amperes: number): Change =>
  (plan) => {
    plan.machine.drive!.stopChain.isolatorBreakingA = amperes;
    branchOf(plan.wiring!, 'main').switchgear!.breakingA = amperes;
  };
const noLimits = { motorCurrentLimitA: null, batteryCurrentLimitA: null };
const ratedAt =
  (ratedVoltageV: number): Change =>
  (plan, option) => {
    Object.assign(plan.machine.drive!.motor, { ratedVoltageV, testVoltageV: 24 });
    Object.assign(controllerOf(plan, option), noLimits);
  };
const ramp =
  (rampUpS: number): Change =>
  (plan, option) => {
    const controller = controllerOf(plan, option);
    controller.control!.rampUpS = rampUpS;
    controller.motorCurrentLimitA = null;
    plan.machine.drive!.wheel.drivenSharePercent = 100;
    plan.machine.drive!.steepestSurface = 'asphalt';
  };
const ratedMotorA =
  (ratedCurrentA: number): Change =>
  (plan) => {
    Object.assign(plan.machine.drive!.motor, { ratedCurrentA, heatResistanceKPerW: 0.05 });
  };
const parked =
  (parking: 'none' | 'manual'): Change =>
  (plan) => {
    Object.assign(plan.machine.drive!.brakes, { parking, serviceDecelerationMps2: null });
    plan.machine.drive!.steepestGradePercent = 9;
  };
const resistorOf =
  (ratedPowerW: number): Change =>
  (plan) => {
    plan.machine.drive!.brakes.resistor = {
      ...newBrakeResistor(),
      resistanceOhm: 0.47,
      ratedPowerW,
    };
  };
const feeding =
  (startPercent: number): Change =>
  (plan, option) => {
    plan.machine.drive!.brakes.onRelease = 'regeneration';
    option.startPercent = startPercent;
  };
const unlimitedBehind =
  (ratedA: number): Change =>
  (plan, option) => {
    Object.assign(controllerOf(plan, option), noLimits);
    branchOf(plan.wiring!, 'main').fuse!.ratedA = ratedA;
  };
const thinLinks =
  (bundled: number): Change =>
  (plan) => {
    Object.assign(branchOf(plan.wiring!, 'links'), {
      conductor: { system: 'awg', gauge: 18 },
      bundled,
    });
  };
const motorLine =
  (areaMm2: number): Change =>
  (plan) => {
    branchOf(plan.wiring!, 'motor-line').conductor = { system: 'metric', areaMm2 };
  };
const lug =
  (dropMv: number): Change =>
  (plan) => {
    branchOf(plan.wiring!, 'main').joints = [{ name: 'Lug', dropMv, atCurrentA: 10 }];
  };
const precharge =
  (prechargeOhm: number | null): Change =>
  ({ wiring }) => {
    branchOf(wiring!, 'main').switchgear!.prechargeOhm = prechargeOhm;
    wiring!.devices.find(({ kind }) => kind === 'controller')!.inputCapacitanceUf = 2200;
  };
const bmsLimit =
  (batteryCurrentLimitA: number): Change =>
  (plan, { pack }) => {
    Object.assign(pack.block.bms!, { continuousDischargeA: 30, peakDischargeA: 60 });
    plan.machine.controller.batteryCurrentLimitA = batteryCurrentLimitA;
  };
const bay =
  (widthMm: number): Change =>
  (plan) => {
    plan.machine.bay = { lengthMm: 181, widthMm, heightMm: 167, massLimitKg: 11 };
  };
const cutoff =
  (cutoffVoltageV: number | null): Change =>
  (plan) => {
    Object.assign(plan.machine.controller, { cutoffVoltageV, restartVoltageV: null });
  };
const port =
  (portLimitA: number): Change =>
  (_plan, option) => {
    option.charger!.currentA = 3;
    option.portLimitA = portLimitA;
  };
const everyDay = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
const weekOf = (plan: Plan, durationMin: number): void => {
  plan.week!.usage = [
    {
      id: 'use',
      outingId: 'picking-shift',
      days: [...everyDay],
      startMin: 600,
      durationMin,
      chancePercent: 100,
    },
  ];
};
const routine =
  (trigger: 'weekend' | 'nightly'): Change =>
  (plan) => {
    weekOf(plan, 35);
    plan.week!.routine.trigger = trigger;
    plan.week!.season = { firstMonth: 6, weeks: 10, seed: 1 };
  };
const seasonOf =
  (weeks: number): Change =>
  (plan) => {
    plan.week!.season = { firstMonth: 1, weeks, seed: 1 };
  };
const use =
  (durationMin: number, weeks: number): Change =>
  (plan) => {
    weekOf(plan, durationMin);
    plan.week!.season = { firstMonth: 1, weeks, seed: 1 };
  };

/** The binding rules, each just beyond its limit and just within it. */
const cases: readonly Case[] = [
  // The charger ends at 29.4 V.
  cart(
    'SUP-1',
    'stop',
    (plan) => (plan.machine.controller.maximumVoltageV = 29.3),
    (plan) => (plan.machine.controller.maximumVoltageV = 29.4),
  ),
  // The controller stops at 20.5 V.
  withRun(
    cart(
      'SUP-2',
      'warn',
      (plan) => (plan.machine.converter!.minimumInputV = 20.6),
      (plan) => (plan.machine.converter!.minimumInputV = 20.5),
    ),
    { brownOutAtMin: null },
  ),
  // 44 W at 12 V are 3.667 A; 75 % of 4.8 A are 3.6 A, of 5 A 3.75 A.
  cart(
    'SUP-3',
    'warn',
    (plan) => Object.assign(plan.machine.converter!, { ratedCurrentA: 4.8, peakCurrentA: 10 }),
    (plan) => Object.assign(plan.machine.converter!, { ratedCurrentA: 5, peakCurrentA: 10 }),
  ),
  cart('SUP-4', 'warn', (plan) => (plan.machine.accessories[2]!.supply = 'mid-point')),
  run('SUP-5', 'note', { study: { standbyDaysToHalf: 59 } }, { study: { standbyDaysToHalf: 60 } }),
  // 24/19.1 = 1.257, 24/19.3 = 1.244.
  tug('DRV-1', 'warn', ratedAt(19.1), ratedAt(19.3)),
  tug('DRV-2', 'warn', ramp(0.4), ramp(0.5)),
  tug('DRV-3', 'warn', ratedMotorA(1), ratedMotorA(200)),
  tug(
    'DRV-4',
    'warn',
    (plan) => (plan.machine.drive!.steepestGradePercent = 90),
    (plan) => (plan.machine.drive!.steepestGradePercent = 2),
  ),
  withRun(
    tug(
      'DRV-5',
      'warn',
      (plan, option) => (controllerOf(plan, option).maximumVoltageV = 24),
      (plan, option) => (controllerOf(plan, option).maximumVoltageV = 60),
    ),
    { drive: null, peakCurrentA: 40, averageCurrentA: 20 },
  ),
  tug(
    'DRV-6',
    'warn',
    (plan) => (plan.machine.drive!.speedLimitKmh = 3),
    (plan) => (plan.machine.drive!.speedLimitKmh = 40),
  ),
  tug(
    'BRK-1',
    'warn',
    (plan) => (plan.machine.drive!.brakes.onRelease = 'short'),
    (plan) => (plan.machine.drive!.brakes.onRelease = 'coast'),
  ),
  tug('BRK-2', 'warn', parked('none'), parked('manual')),
  tug('BRK-3', 'warn', resistorOf(10), resistorOf(1000)),
  tug('BRK-4', 'warn', feeding(91), feeding(90)),
  tug('STP-1', 'stop', chain({ isolator: 'none' })),
  tug('STP-2', 'stop', breaking(1), breaking(2000)),
  tug(
    'STP-3',
    'warn',
    chain({ throttleFaultDetection: 'no', startInterlock: 'yes' }),
    chain({ throttleFaultDetection: 'yes', startInterlock: 'yes' }),
  ),
  // About 13.6 A flow in the main line: 17 A are asked.
  cart(
    'FUS-1',
    'stop',
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.ratedA = 16.5),
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.ratedA = 17.5),
  ),
  cart(
    'FUS-2',
    'warn',
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.fromSourceMm = 181),
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.fromSourceMm = 180),
  ),
  // 1.35 x 36 A = 48.6 A stays below 1.5 x 33 A = 49.5 A.
  tug('FUS-3', 'warn', unlimitedBehind(80), unlimitedBehind(36)),
  cart(
    'FUS-4',
    'warn',
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.class = 'breaker-auto-reset'),
    (plan) => (branchOf(plan.wiring!, 'main').fuse!.class = 'breaker-manual'),
  ),
  cart('WIR-1', 'stop', thinLinks(7), thinLinks(3)),
  // 0.75 mm², 1.53 A: about 0.083 V a metre one way; 5 % of 12 V are 0.6 V, 3 % 0.36 V.
  cart(
    'WIR-2',
    'warn',
    (plan) => (branchOf(plan.wiring!, 'rear-line').lengthM = 7.6),
    (plan) => (branchOf(plan.wiring!, 'rear-line').lengthM = 4.1),
  ),
  // The motor limit is 60 A: 6 mm² stands 55 A, 10 mm² 70 A.
  cart('WIR-3', 'warn', motorLine(6), motorLine(10)),
  cart('WIR-4', 'warn', lug(15.1), lug(15)),
  cart('WIR-5', 'note', precharge(null), precharge(47)),
  // The radio hangs on the converter; a second line from the pack ties both.
  cart('WIR-6', 'stop', (plan) => {
    const radio = branchOf(plan.wiring!, 'radio-line');
    plan.wiring!.branches.push({ ...radio, id: 'tie', name: 'Second feed', from: 'bus' });
  }),
  cart('PCK-1', 'stop', pair(12.29), pair(12.7)),
  // 2 x 36 mΩ: 2.2 V drive 30.6 A, more than the string fuse; 0.25 V drive 3.5 A, less than 0.3 x 12 A.
  cart('PCK-2', 'stop', strings(2.2), strings(0.25), 'agm-two-strings'),
  cart('PCK-3', 'warn', (_plan, { pack }) => (pack.stringFuseA = null), nothing, 'agm-two-strings'),
  cart('PCK-4', 'stop', reading(12.7), reading(25.4)),
  cart('PCK-5', 'warn', bmsLimit(31), bmsLimit(30), 'lfp-pack'),
  // Two blocks of 181 x 77 x 167 mm.
  cart('PCK-6', 'warn', bay(153), bay(154)),
  cart('CUT-1', 'warn', cutoff(null), cutoff(20.5)),
  run(
    'CUT-2',
    'warn',
    { run: { remainingPercent: 20.5, endedBy: 'controller-cutoff' } },
    { run: { remainingPercent: 20, endedBy: 'controller-cutoff' } },
  ),
  // Eight groups that open at 2.5 V: 20.0 V.
  cart('CUT-3', 'warn', cutoff(20), cutoff(20.6), 'lfp-pack'),
  cart('CHG-1', 'stop', (_plan, { charger }) => (charger!.chemistries = ['lfp'])),
  // At 18 °C 29.1 to 29.7 V are wanted, with 1 % to either side: 28.81 V and up.
  cart(
    'CHG-2',
    'warn',
    (_plan, { charger }) => (charger!.endVoltageV = 28.75),
    (_plan, { charger }) => (charger!.endVoltageV = 28.85),
  ),
  // The port carries 4 A.
  cart('CHG-3', 'warn', port(2.9), port(3.1)),
  cart(
    'CHG-4',
    'stop',
    (plan) => (plan.outings[0]!.ambientC = -1),
    (plan) => (plan.outings[0]!.ambientC = 1),
    'lfp-pack',
  ),
  cart('CHG-5', 'warn', (_plan, { charger }) => (charger!.cellGroups = 6)),
  cart(
    'CHG-6',
    'warn',
    (plan) => Object.assign(plan.wiring!, { portPolarity: 'no', chargeInhibit: 'yes' }),
    (plan) => Object.assign(plan.wiring!, { portPolarity: 'yes', chargeInhibit: 'yes' }),
  ),
  cart(
    'CHG-7',
    'warn',
    (plan) => (plan.week!.place.kind = 'sleeping-room'),
    (plan) => (plan.week!.place.kind = 'open-air'),
  ),
  cart('CHG-8', 'note', routine('weekend'), routine('nightly')),
  cart('KEP-1', 'warn', seasonOf(26), seasonOf(49)),
  cart('KEP-2', 'note', use(40, 52), use(5, 4)),
  run('RUN-1', 'warn', { run: { runTimeMin: 89.9 } }, { run: { runTimeMin: 90 } }),
  run(
    'RUN-2',
    'note',
    { run: { runTimeMin: 100 }, study: { plainMin: 110.1 } },
    { run: { runTimeMin: 100 }, study: { plainMin: 109.9 } },
  ),
];

/** Reminders that stand in every plan have no near miss. */
const reminders: readonly FindingId[] = ['RID-1', 'LAW-1'];

function found({ sample, option, id }: Case, change: Change, figures: Figures, language: Language) {
  const plan = planWith(sample, option, (own, whole) => change(whole, own));
  const studies = studyPlan(plan).options.map((study) => ({
    ...study,
    ...figures.study,
    run: { ...study.run, ...figures.run },
  }));
  const table = everyRule.filter((rule) => rule.id === id);
  return planFindings(plan, studies, language, plan.headlineOuting, table);
}

const standing = (findings: readonly Finding[]) =>
  findings.filter(({ status }) => status === 'finding');

test('every rule is in the table once, and every binding identifier is a rule', () => {
  const known = everyRule.map(({ id }) => id);
  expect(new Set(known).size).toBe(known.length);
  const tried = new Set([...cases.map(({ id }) => id), ...reminders]);
  // The rule on rolling backwards is tried with the other rules of the drive.
  expect(known.filter((id) => !tried.has(id))).toEqual(['DRV-7']);
  expect([...tried].filter((id) => !known.includes(id))).toEqual([]);
  expect(tried.size).toBe(51);
});

test.each(everyRule.map((rule) => [rule.id, rule] as const))(
  '%s says in both languages what it looks for, and where it comes from',
  (_id, { about, source, sourceClass }) => {
    expect(about.en.length).toBeGreaterThan(15);
    expect(about.de).not.toBe(about.en);
    expect(source.length).toBeGreaterThan(10);
    if (sourceClass === 'common-practice')
      expect(source.toLowerCase()).toContain('common practice');
  },
);

describe('each rule stands just beyond its limit, with words in both languages, and not within it', () => {
  test.each(cases.map((entry) => [entry.id, entry] as const))('%s', (_id, entry) => {
    const { beyond, within, severity } = entry;
    const english = standing(found(entry, beyond, entry.figures?.beyond ?? {}, 'en'));
    expect(english.map((finding) => finding.severity)).toContain(severity);
    const german = standing(found(entry, beyond, entry.figures?.beyond ?? {}, 'de'));
    expect(german).toHaveLength(english.length);
    german.forEach((finding, index) => {
      const other = english[index]!;
      expect(finding.what).not.toBe(other.what);
      expect(finding.consequence).not.toBe(other.consequence);
      expect(finding.remedy).not.toBe(other.remedy);
      expect(finding.fields).toEqual(other.fields);
    });
    for (const { fields, what } of english) {
      expect(fields.length, what).toBeGreaterThan(0);
      for (const field of fields) expect(resolvePath(field), field).not.toBeNull();
    }
    const left = standing(found(entry, within, entry.figures?.within ?? {}, 'en'));
    expect(left.map(({ what }) => what)).toEqual([]);
  });
});

test.each(reminders)('%s is a note in every plan', (id) => {
  const plan = planWith('orchard-cart', 'agm-series');
  const table = everyRule.filter((rule) => rule.id === id);
  expect(planFindings(plan, [], 'en', plan.headlineOuting, table)).toMatchObject([
    { status: 'finding', severity: 'note' },
  ]);
});
