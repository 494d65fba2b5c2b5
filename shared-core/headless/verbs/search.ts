import { searchPacks } from '../../compare/search/search-packs.ts';
import { chargersFor, usualWishes, type ChargerChoice } from '../../compare/search/usual-wishes.ts';
import type { FoundPack, SearchResult, SearchWishes } from '../../compare/search/candidate.ts';
import type { Size } from '../../compare/search/fit-in-bay.ts';
import { chemistrySchema, type Chemistry } from '../../plan/schema/block.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { formatFixed } from '../../units/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan } from '../load-plan.ts';
import { readNumber } from '../read-number.ts';
import { done, jsonOption, outingOption, refuse, type Verb, type VerbCall } from '../verb.ts';

const choices: readonly ChargerChoice[] = ['any', 'at-hand', 'open'];

export const searchVerb: Verb = {
  name: 'search',
  usage: 'FILE [options]',
  summary:
    "find packs from the library and the plan's own blocks that fit the machine and the goal",
  details: [
    'Bay, mass limit, goal and voltages are those of the plan unless told otherwise.',
    'Prices marked ~ are what such parts usually cost. "Best" packs are beaten by no other in every figure.',
  ],
  options: [
    jsonOption,
    outingOption,
    { name: '--from', value: 'V', meaning: 'lowest nominal pack voltage [V]' },
    { name: '--to', value: 'V', meaning: 'highest nominal pack voltage [V]' },
    { name: '--goal', value: 'MIN', meaning: 'shortest run time [min]' },
    { name: '--mass', value: 'KG', meaning: 'heaviest pack [kg]' },
    { name: '--price', value: 'N', meaning: "dearest pack with charger, in the plan's currency" },
    { name: '--bay', value: 'LxWxH', meaning: 'inner size of the bay [mm]' },
    {
      name: '--chemistry',
      value: 'NAME',
      meaning: 'agm, gel, flooded, lfp or nmc; may be repeated',
      repeats: true,
    },
    {
      name: '--chargers',
      value: choices.join('|'),
      meaning: 'any of the library (usual), only those of the plan, or none',
    },
    { name: '--parallel', value: 'N', meaning: 'most strings in parallel (4)' },
    { name: '--runs', value: 'N', meaning: 'most packs to simulate (300)' },
  ],
  arguments: [1, 1],
  async run(call) {
    const {
      positional: [path],
      value,
      has,
      host,
    } = call;
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const { plan } = loaded;
    const outing = findOuting(plan, value('--outing'));
    if (!outing.ok) return refuse(outing.line);
    const wishes = readWishes(plan, outing.outing.id, call);
    if (typeof wishes === 'string') return refuse(wishes);
    const result = searchPacks(plan, wishes);
    if (has('--json')) {
      host.out(jsonText({ outing: outing.outing.id, goalMin: wishes.goalMin, ...result }));
      return done;
    }
    host.out(tableOf(result.found));
    host.out(countsOf(result));
    return done;
  },
};

/** The wishes of the plan with those of the command in their place; a line where one of them is wrong. */
function readWishes(plan: Plan, outingId: string, call: VerbCall): SearchWishes | string {
  const usual = usualWishes(plan, outingId);
  const { value } = call;
  const from = readNumber('--from', value('--from'), usual.leastVoltageV, { least: 1, most: 500 });
  if (!from.ok) return from.line;
  const to = readNumber('--to', value('--to'), usual.mostVoltageV, { least: 1, most: 500 });
  if (!to.ok) return to.line;
  if (to.value < from.value) return '--to: Give a voltage at or above --from, for example 28.';
  const goal = readNumber('--goal', value('--goal'), usual.goalMin, { least: 0, most: 10_080 });
  if (!goal.ok) return goal.line;
  const mass = readNumber('--mass', value('--mass'), usual.massLimitKg ?? Infinity, {
    least: 0,
    most: 5000,
  });
  if (!mass.ok) return mass.line;
  const price = readNumber('--price', value('--price'), Infinity, { least: 0, most: 1e6 });
  if (!price.ok) return price.line;
  const parallel = readNumber('--parallel', value('--parallel'), usual.mostParallel, {
    least: 1,
    most: 12,
    whole: true,
  });
  if (!parallel.ok) return parallel.line;
  const runs = readNumber('--runs', value('--runs'), usual.mostRuns, {
    least: 1,
    most: 5000,
    whole: true,
  });
  if (!runs.ok) return runs.line;
  const bay = readBay(value('--bay'), usual.bay);
  if (typeof bay === 'string') return bay;
  const names = call.values('--chemistry');
  const chemistries = chemistrySchema.options.filter((name) => names.includes(name));
  const unknown = names.find((name) => !chemistries.includes(name as Chemistry));
  if (unknown !== undefined)
    return `--chemistry: ${unknown} is not known. Use one of: ${chemistrySchema.options.join(', ')}.`;
  const choice = choices.find((each) => each === (value('--chargers') ?? 'any'));
  if (choice === undefined) return `--chargers: Use one of: ${choices.join(', ')}.`;
  const limit = (most: number): number | null => (Number.isFinite(most) ? most : null);
  return {
    ...usual,
    leastVoltageV: from.value,
    mostVoltageV: to.value,
    goalMin: goal.value,
    massLimitKg: limit(mass.value),
    priceLimit: limit(price.value),
    mostParallel: parallel.value,
    mostRuns: runs.value,
    bay,
    chemistries: names.length === 0 ? usual.chemistries : chemistries,
    chargers: chargersFor(plan, choice),
  };
}

function readBay(word: string | undefined, usual: Size | null): Size | null | string {
  if (word === undefined) return usual;
  const edges = word.split(/[x×]/i).map(Number);
  const [length = 0, width = 0, height = 0] = edges;
  const isSize = edges.length === 3 && edges.every((edge) => edge > 0 && edge <= 10_000);
  return isSize
    ? [length, width, height]
    : '--bay: Give three lengths in millimetres, for example 400x200x180.';
}

function tableOf(found: readonly FoundPack[]): string {
  return alignedTable(
    ['Pack', 'Best', 'Run min', 'Mass kg', 'Price', 'Charger done h', 'Bay', 'Charger'],
    found.map((pack) => [
      pack.option.name,
      pack.isBest ? 'yes' : '',
      figure(pack.runTimeMin, 0),
      figure(pack.massKg, 1),
      `${pack.isPriceTypical ? '~' : ''}${figure(pack.price, 0)}`,
      figure(pack.chargeHours, 1),
      pack.bay,
      pack.option.charger?.name ?? '–',
    ]),
  );
}

function countsOf({ candidateCount, rejected, notRunCount, found }: SearchResult): string {
  const fell = Object.entries(rejected).filter(([, count]) => count > 0);
  const words = fell.map(([rule, count]) => `${rule} ${count}`).join(', ');
  return `${candidateCount} candidates: ${found.length} found; fell out: ${words === '' ? 'none' : words}; not run ${notRunCount}\n`;
}

function figure(value: number | null, decimals: number): string {
  return value === null ? '–' : formatFixed(value, decimals, 'en');
}
