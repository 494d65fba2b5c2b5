import { describe, expect, test } from 'vitest';
import { samplePlan } from '#core/plan/samples/index.ts';
import { runOuting } from '#core/run/run-outing.ts';
import { peukertReasons, peukertReasonText } from '#core/study/peukert-reasons.ts';

const plan = samplePlan('market-scooter');
const weak = plan.options[0]!;
const outing = plan.outings[0]!;
const run = runOuting(weak, plan.machine, outing);
const kinds = (change: Partial<typeof run>, peukertMin: number | null, of = weak, out = outing) =>
  peukertReasons(of, out, { ...run, ...change }, peukertMin).map(({ kind }) => kind);

describe('why the run differs from the quick figure', () => {
  test('a tired pair in the cold names temperature, age, charge left, swings and unequal blocks', () => {
    expect(kinds({}, 3 * run.runTimeMin)).toEqual([
      'temperature',
      'age',
      'charge-left',
      'current-varies',
      'blocks-differ',
    ]);
  });

  test('a run stopped by the longest time says only that', () => {
    expect(kinds({ endedBy: 'time-limit' }, 3 * run.runTimeMin)).toEqual(['not-run-out']);
  });

  test('figures within 2 % of one another are said to agree', () => {
    expect(kinds({}, 1.01 * run.runTimeMin)).toEqual(['no-difference']);
  });

  test('a run that could not be computed, or an empty figure, has no reasons', () => {
    const problem = { path: 'machine', problem: 'missing', remedy: 'fill in' };
    expect(kinds({ problem }, 60)).toEqual([]);
    expect(kinds({}, 0)).toEqual([]);
    expect(kinds({}, null)).toEqual([]);
  });

  test('every reason is a sentence in both languages', () => {
    for (const reason of peukertReasons(weak, outing, run, 3 * run.runTimeMin))
      for (const language of ['en', 'de'] as const)
        expect(peukertReasonText(reason, language)).toMatch(/^[\dA-ZÄÖÜ].*\.$/);
  });
});
