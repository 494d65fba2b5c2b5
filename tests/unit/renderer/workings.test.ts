import { describe, expect, it } from 'vitest';
import { fieldDocs, resolvePath } from '#core/plan/field-docs.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { studyCharging } from '#core/study/study-charging.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import type { Working } from '#renderer/controls/working.ts';
import { ledgerParts } from '#renderer/places/run/ledger-parts.ts';
import { compareRows } from '#renderer/state/compare-rows.ts';
import { learn } from '#renderer/text/spoken.ts';
import {
  chargeFigureWorking,
  type ChargeFigure,
} from '#renderer/workings/charge-figure-workings.ts';
import { compareWorking } from '#renderer/workings/compare-working.ts';
import {
  converterWorking,
  ledgerWorking,
  promiseWorking,
  runFigureWorking,
  standbyWorking,
} from '#renderer/workings/run-figure-workings.ts';
import { seasonWorking } from '#renderer/workings/season-working.ts';
import { speedWorking } from '#renderer/workings/speed-working.ts';

await learn('de');

const plan = samplePlan('campsite-tug');
const study = studyPlan(plan, plan.headlineOuting, 'en');
const option = study.options[0]!;
const charging = studyCharging(
  plan,
  plan.headlineOuting,
  study.options.map(({ run }) => ({
    blocks: run.blocks,
    remainingPercent: run.remainingPercent,
  })),
  'en',
).options[0]!;
const rest = { minutes: 10, field: 'outings.0.restAfterMin' };
const chargeFigures: readonly ChargeFigure[] = [
  'done',
  'to80',
  'to98',
  'into',
  'mains',
  'cost',
  'highest',
];

describe.each(['en', 'de'] as const)('the workings in %s', (language) => {
  const all: readonly (readonly [string, Working])[] = [
    ...compareRows.map(
      ({ id }) => [id, compareWorking(id, option, plan, language, 'metric')] as const,
    ),
    ...(['left', 'lowest', 'peak', 'rest'] as const).map(
      (figure) => [figure, runFigureWorking(figure, option, 0, rest, language)] as const,
    ),
    ...ledgerParts.map((part) => [part, ledgerWorking(part, option, language)] as const),
    ['converter', converterWorking(option, language)],
    ['standby', standbyWorking(option, 0, language)],
    ['promise', promiseWorking(option, option.plainMin ?? NaN, language)],
    ['speed', speedWorking(option, language, 'metric')],
    ...(charging.charge === null
      ? []
      : chargeFigures.map(
          (figure) =>
            [
              figure,
              chargeFigureWorking(
                figure,
                {
                  charge: charging.charge!,
                  charger: plan.options[0]!.charger!,
                  optionIndex: 0,
                  cost: charging.cost,
                  currency: plan.currency,
                },
                language,
              ),
            ] as const,
        )),
    ...(charging.week?.seasons ?? []).map(
      (season) => ['season', seasonWorking('lost', season, 'x', '1', language)] as const,
    ),
  ];

  it('covers strip, comparison, run and charge', () => {
    expect(all.length).toBeGreaterThan(30);
  });

  it.each(all)('%s says formula, inputs, result and source', (_, working) => {
    expect(working.formula.join('').length).toBeGreaterThan(3);
    expect(working.inputs.length).toBeGreaterThan(0);
    expect(working.result.label).not.toBe('');
    expect(working.result.value).toMatch(/./);
    expect(working.source.length).toBeGreaterThan(10);
    expect(JSON.stringify(working)).not.toMatch(/NaN|Infinity|undefined/);
  });

  it.each(all)('%s leads only to fields the plan has', (_, working) => {
    for (const { field } of [...working.inputs, ...(working.steps ?? [])]) {
      if (field === undefined) continue;
      expect(resolvePath(field), field).not.toBeNull();
      expect(fieldDocs(field).title).not.toBe('');
    }
  });
});
