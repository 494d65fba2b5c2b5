import { blockParts, chargerParts } from '../../library/index.ts';
import { chemistrySchema } from '../../plan/schema/block.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Charger } from '../../plan/schema/charger.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { nominalVoltageV } from '../../pack/nominal-voltage.ts';
import { outingOf } from '../scenario.ts';
import type { SearchWishes } from './candidate.ts';

/** Which chargers a search may take. */
export type ChargerChoice = 'any' | 'at-hand' | 'open';

/** Blocks of the library, of the options where they are the user's own or priced, and the own parts. */
export function blocksOfPlan(plan: Plan): Block[] {
  const used = plan.options.map(({ pack }) => pack.block);
  const own = plan.ownParts.blocks.map(({ part }) => part);
  const stated = [...used.filter(({ partId, price }) => partId === null || price !== null), ...own];
  const known = new Set<string>();
  const distinct = stated.filter((block) => {
    const key = JSON.stringify(block);
    return !known.has(key) && known.add(key);
  });
  const replaced = new Set(distinct.map(({ partId }) => partId));
  const library = blockParts.map(({ value }) => value);
  // A library block of which the user has stated a price would be found twice.
  return [...distinct, ...library.filter(({ partId }) => !replaced.has(partId))];
}

/** Chargers the user has: of the options and the own parts. */
export function chargersAtHand(plan: Plan): Charger[] {
  const used = plan.options.flatMap(({ charger }) => (charger === null ? [] : [charger]));
  return [...used, ...plan.ownParts.chargers.map(({ part }) => part)];
}

export function chargersFor(plan: Plan, choice: ChargerChoice): Charger[] {
  switch (choice) {
    case 'any':
      return [
        ...chargersAtHand(plan),
        // Unregulated supplies and equalising chargers are nothing to propose.
        ...chargerParts
          .map(({ value }) => value)
          .filter(({ kind, equalises }) => kind === 'staged' && !equalises),
      ];
    case 'at-hand':
      return chargersAtHand(plan);
    case 'open':
      return [];
  }
}

/** Share by which a pack's nominal voltage may differ from those the plan considers: 24 V lead and 25.6 V LFP are one class. */
const voltageRoom = 0.1;

/** The wishes a plan itself states: its bay, mass limit, goal and the voltages of its options; everything else open. */
export function usualWishes(plan: Plan, outingId?: string): SearchWishes {
  const { lengthMm, widthMm, heightMm, massLimitKg } = plan.machine.bay;
  const outing = outingOf(plan, outingId);
  const voltages = plan.options.map(nominalVoltageV);
  return {
    outingId: outing.id,
    blocks: blocksOfPlan(plan),
    chargers: chargersFor(plan, 'any'),
    chemistries: chemistrySchema.options,
    leastVoltageV: (1 - voltageRoom) * Math.min(...voltages),
    mostVoltageV: (1 + voltageRoom) * Math.max(...voltages),
    mostSeries: 24,
    mostParallel: 4,
    bay:
      lengthMm === null || widthMm === null || heightMm === null
        ? null
        : [lengthMm, widthMm, heightMm],
    massLimitKg,
    priceLimit: null,
    goalMin: outing.goalMin,
    mostRuns: 300,
  };
}
