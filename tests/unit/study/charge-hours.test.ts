import { describe, expect, test } from 'vitest';
import { samplePlan, sampleNames } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { studyCharging } from '#core/study/study-charging.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { sheetOf } from '../../support/sheet-of.ts';
import { command } from '../headless/memory-host.ts';

interface Charged {
  readonly options: readonly {
    readonly id: string;
    readonly hoursToFull: number | null;
    readonly charge: { readonly hoursToFull: number | null } | null;
  }[];
}

describe.each(sampleNames)('the hours to full of %s', (name) => {
  const plan = samplePlan(name);
  const study = studyPlan(plan);
  const strip = study.options.map(({ chargerMatch }) => chargerMatch?.hoursToFull ?? null);

  test('are one figure in the strip, in the curve of the charging place and in its table of chargers', () => {
    const { options } = studyCharging(
      plan,
      plan.headlineOuting,
      study.options.map(({ run }) => run),
    );
    const usable = options.filter((_, index) => strip[index] !== null);
    expect(usable.length).toBeGreaterThan(0);
    options.forEach(({ charge, chargers }, index) => {
      const own = chargers.find(({ origin }) => origin === 'own');
      expect(own?.match.hoursToFull ?? null).toBe(strip[index]);
      if (strip[index] !== null) expect(charge?.hoursToFull).toBe(strip[index]);
    });
  });

  test('are the same in both verbs and on the sheet', async () => {
    const files = { plan: writePlan(plan) };
    const [run, charge] = await Promise.all(
      ['run', 'charge'].map(async (verb) => {
        const { out } = await command([verb, 'plan', '--json'], files);
        return (JSON.parse(out) as Charged).options;
      }),
    );
    expect(run!.map(({ hoursToFull }) => hoursToFull)).toEqual(strip);
    expect(charge!.map(({ hoursToFull }) => hoursToFull)).toEqual(strip);
    charge!.forEach((entry, index) => {
      if (strip[index] !== null) expect(entry.charge?.hoursToFull).toBe(strip[index]);
    });
    strip.forEach((hours, index) => {
      const { figures } = sheetOf(plan, { optionId: plan.options[index]!.id });
      expect(figures.hoursToFull).toBe(hours);
    });
  });
});

test('a supply that never ends its charge counts until the pack holds 98 %, and the curve says so too', () => {
  const plan = samplePlan('orchard-cart');
  const option = plan.options[0]!;
  option.charger = {
    ...option.charger!,
    kind: 'wall-supply',
    endVoltageV: 28.5,
    tailCurrentA: null,
    maximumHours: null,
  };
  const study = studyPlan(plan);
  const { options } = studyCharging(
    plan,
    plan.headlineOuting,
    study.options.map(({ run }) => run),
  );
  const { charge } = options[0]!;
  expect(charge!.endedBy).toBe('unplugged');
  expect(charge!.hoursTo98).not.toBeNull();
  expect(charge!.hoursToFull).toBe(charge!.hoursTo98);
});
