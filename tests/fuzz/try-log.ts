import { fitBlock } from '#core/bench/index.ts';
import { newBlock } from '#core/plan/defaults.ts';
import { fittedSchema } from '#core/plan/schema/fitted.ts';
import { readAnyLog } from '../support/read-any-log.ts';
import { mutateText } from './mutate-text.ts';
import { notFinite } from './not-finite.ts';
import type { Seeded } from './seeded.ts';
import type { Outcome } from './try-plan.ts';

/** A plausible discharge in one of several layouts, before it is spoilt. */
function wholeLog(random: Seeded): string {
  const delimiter = random.pick([',', ';', '\t']);
  const comma = delimiter !== ',' && random.chance(0.5);
  const cell = (value: number) => {
    const text = value.toFixed(3);
    return comma ? text.replace('.', ',') : text;
  };
  const currentA = 0.5 + 6 * random.share();
  const rows = 5 + random.below(80);
  const header = random.pick([['time_s', 'voltage_V', 'current_A'], ['t [min]', 'U', 'I'], null]);
  const lines = Array.from({ length: rows }, (_, index) => {
    const share = index / rows;
    return [index * 60, 12.9 - 1.2 * share - 1.1 * share ** 12 - 0.02 * currentA, currentA]
      .map(cell)
      .join(delimiter);
  });
  return [...(header === null ? [] : [header.join(delimiter)]), ...lines].join('\n');
}

/** A spoilt log through mapping, reader and fit: every row kept or counted, every fit whole or refused. */
export function tryLog(random: Seeded): Outcome {
  const text = mutateText(wholeLog(random), random);
  const log = readAnyLog(text, 100);
  if (log === null) return { kind: 'refused', problem: 'no mapping' };
  const outcome = fitBlock({
    block: newBlock(),
    layout: { kind: 'pack', count: 1, cells: 6, strings: 1, linkOhm: 0 },
    runs: log.runs,
    temperatureC: 20,
    ageYears: 0,
    cyclesDone: 0,
    source: 'fuzz',
  });
  if (!outcome.ok) return { kind: 'refused', problem: outcome.problem };
  if (!fittedSchema.safeParse(outcome.fit.fitted).success)
    throw new Error('a fit outside its schema');
  const found = notFinite(outcome.fit.values) ?? notFinite(outcome.fit.rmsMv);
  if (found !== null) throw new Error(`fit${found}`);
  return { kind: 'worked' };
}
