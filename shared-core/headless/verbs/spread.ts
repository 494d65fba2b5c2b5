import { defaultSpreadWishes } from '../../compare/spread/spread-wishes.ts';
import { spreadPlan } from '../../compare/spread/spread-plan.ts';
import { formatFixed } from '../../units/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan } from '../load-plan.ts';
import { readNumber } from '../read-number.ts';
import { rangeOption, readRanges } from '../read-ranges.ts';
import { done, jsonOption, outingOption, refuse, type Verb } from '../verb.ts';

export const spreadVerb: Verb = {
  name: 'spread',
  usage: 'FILE [options]',
  summary:
    'print low, likely and high run time of every option, and the chance of meeting the goal',
  details: [
    'Low and high are the 10th and 90th percentile of many runs with the assumptions drawn anew.',
    'The same seed gives the same figures.',
  ],
  options: [
    jsonOption,
    outingOption,
    { name: '--cases', value: 'N', meaning: 'runs for each option, 10 to 20000 (500)' },
    { name: '--seed', value: 'N', meaning: 'whole number that starts the draws (1)' },
    rangeOption,
  ],
  arguments: [1, 1],
  async run({ positional: [path], value, values, has, host }) {
    const cases = readNumber('--cases', value('--cases'), defaultSpreadWishes.caseCount, {
      least: 10,
      most: 20_000,
      whole: true,
    });
    if (!cases.ok) return refuse(cases.line);
    const seed = readNumber('--seed', value('--seed'), defaultSpreadWishes.seed, {
      least: -(2 ** 31),
      most: 2 ** 31,
      whole: true,
    });
    if (!seed.ok) return refuse(seed.line);
    const read = readRanges(values('--range'));
    if (!read.ok) return refuse(read.line);
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const found = findOuting(loaded.plan, value('--outing'));
    if (!found.ok) return refuse(found.line);
    const spread = spreadPlan(loaded.plan, {
      outingId: found.outing.id,
      caseCount: cases.value,
      seed: seed.value,
      ranges: read.ranges,
    });
    if (has('--json')) {
      host.out(
        jsonText({
          ...spread,
          options: spread.options.map(({ low, likely, high, sortedMin: _sorted, ...rest }) => ({
            ...rest,
            runTimeLowMin: low.value,
            runTimeLikelyMin: likely.value,
            runTimeHighMin: high.value,
            runTimeLowErrorMin: low.error,
            runTimeLikelyErrorMin: likely.error,
            runTimeHighErrorMin: high.error,
          })),
          comparisons: spread.comparisons.map(({ low, likely, high, ...rest }) => ({
            ...rest,
            differenceLowMin: low.value,
            differenceLikelyMin: likely.value,
            differenceHighMin: high.value,
          })),
        }),
      );
      return done;
    }
    host.out(
      alignedTable(
        ['Option', 'Low min', 'Likely min', 'High min', 'Reaches goal %'],
        spread.options.map(({ name, low, likely, high, goalPercent }) => [
          name,
          one(low.value),
          one(likely.value),
          one(high.value),
          goalPercent === null ? '–' : formatFixed(goalPercent, 0, 'en'),
        ]),
      ),
    );
    const nameOf = (id: string) => spread.options.find((entry) => entry.id === id)?.name ?? id;
    for (const { firstId, secondId, firstOutlastsPercent } of spread.comparisons) {
      host.out(
        `${nameOf(firstId)} outlasts ${nameOf(secondId)} in ${formatFixed(firstOutlastsPercent, 0, 'en')} of 100 cases\n`,
      );
    }
    return done;
  },
};

function one(figure: number): string {
  return formatFixed(figure, 1, 'en');
}
