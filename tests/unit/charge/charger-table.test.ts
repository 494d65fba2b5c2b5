import { expect, test } from 'vitest';
import { chargerTable } from '#core/charge/charger-table.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { studyCharging } from '#core/study/study-charging.ts';
import { studyPlan } from '#core/study/study-plan.ts';

test('the charger table leads with the chargers of the plan, the old one among them, then the best of the library', () => {
  const plan = samplePlan('orchard-cart');
  const lithium = plan.options.find(({ id }) => id === 'lfp-pack')!;
  const table = chargerTable(plan, lithium, { ambientC: 20, remainingPercent: 20 });
  const [own, old] = table;
  expect(own!.origin).toBe('own');
  expect(own!.match.verdict).toBe('fits');
  expect(old!.origin).toBe('other-option');
  expect(old!.match.verdict).toBe('misfits');
  expect(old!.match.aspects.find(({ aspect }) => aspect === 'chemistry')!.findingId).toBe('CHG-1');
  const library = table.filter(({ origin }) => origin === 'library');
  expect(library.length).toBeGreaterThan(20);
  const firstMisfit = library.findIndex(({ match }) => match.verdict === 'misfits');
  expect(library.slice(firstMisfit).every(({ match }) => match.verdict === 'misfits')).toBe(true);
});

test('the charging study starts each charge where the outing left the blocks', () => {
  const plan = samplePlan('market-scooter');
  const study = studyPlan(plan);
  const charging = studyCharging(
    plan,
    study.outingId,
    study.options.map(({ run }) => run),
  );
  charging.options.forEach(({ charge }, index) => {
    const { blocks } = study.options[index]!.run;
    const lowest = Math.min(...blocks.map(({ remainingPercent }) => remainingPercent));
    expect(charge!.startPercent).toBeGreaterThanOrEqual(lowest - 0.01);
    expect(
      charge!.units.map(({ startPercent }) => startPercent).toSorted((a, b) => a - b)[0],
    ).toBeCloseTo(lowest, 6);
  });
  expect(charging.findings.some(({ id }) => id === 'KEP-1')).toBe(true);
});
