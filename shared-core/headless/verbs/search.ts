import { searchPacks } from '../../compare/search/search-packs.ts';
import { blockParts } from '../../library/index.ts';
import { chemistrySchema } from '../../plan/schema/block.ts';
import { formatFixed } from '../../units/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan } from '../load-plan.ts';
import { done, jsonOption, outingOption, refuse, type Verb } from '../verb.ts';

export const searchVerb: Verb = {
  name: 'search',
  usage: 'FILE --from V --to V [options]',
  summary:
    "find packs from the library and the plan's own blocks that fit the machine and the goal",
  details: [
    'Bay, mass limit and goal are those of the plan. With --own-chargers only packs remain that a',
    'charger of the plan fits. Library blocks have no price; packs of them are shown without one.',
  ],
  options: [
    jsonOption,
    outingOption,
    { name: '--from', value: 'V', meaning: 'lowest nominal pack voltage [V]' },
    { name: '--to', value: 'V', meaning: 'highest nominal pack voltage [V]' },
    { name: '--own-chargers', meaning: 'only packs that a charger of the plan fits' },
  ],
  arguments: [1, 1],
  async run({ positional: [path], value, has, host }) {
    const leastVoltageV = Number(value('--from'));
    const mostVoltageV = Number(value('--to'));
    if (!(leastVoltageV > 0)) return refuse('--from: Give the lowest voltage, for example 22.');
    if (!(mostVoltageV >= leastVoltageV))
      return refuse('--to: Give a voltage at or above --from, for example 28.');
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const { plan } = loaded;
    const found = findOuting(plan, value('--outing'));
    if (!found.ok) return refuse(found.line);
    const { lengthMm, widthMm, heightMm, massLimitKg } = plan.machine.bay;
    const own = plan.options.map(({ pack }) => pack.block);
    const result = searchPacks(plan, {
      outingId: found.outing.id,
      blocks: [
        ...blockParts.map(({ value: block }) => block),
        ...own.filter(({ partId, price }) => partId === null || price !== null),
        ...plan.ownParts.blocks.map(({ part }) => part),
      ],
      chargers: has('--own-chargers')
        ? [
            ...plan.options.flatMap(({ charger }) => (charger === null ? [] : [charger])),
            ...plan.ownParts.chargers.map(({ part }) => part),
          ]
        : [],
      chemistries: chemistrySchema.options,
      leastVoltageV,
      mostVoltageV,
      mostSeries: 24,
      mostParallel: 12,
      bay:
        lengthMm === null || widthMm === null || heightMm === null
          ? null
          : [lengthMm, widthMm, heightMm],
      massLimitKg,
      priceLimit: null,
      goalMin: found.outing.goalMin,
      mostRuns: 300,
    });
    if (has('--json')) {
      host.out(jsonText({ outing: found.outing.id, goalMin: found.outing.goalMin, ...result }));
      return done;
    }
    host.out(
      alignedTable(
        ['Pack', 'Best', 'Run min', 'Mass kg', 'Price', 'Charge h', 'Bay'],
        result.found.map((pack) => [
          pack.option.name,
          pack.isBest ? 'yes' : '',
          figure(pack.runTimeMin),
          figure(pack.massKg),
          figure(pack.price),
          figure(pack.chargeHours),
          pack.bay,
        ]),
      ),
    );
    const fell = Object.entries(result.rejected).filter(([, count]) => count > 0);
    host.out(
      `${result.candidateCount} candidates; fell out: ${fell.map(([rule, count]) => `${rule} ${count}`).join(', ')}; not run ${result.notRunCount}\n`,
    );
    return done;
  },
};

function figure(value: number | null): string {
  return value === null ? '–' : formatFixed(value, 1, 'en');
}
