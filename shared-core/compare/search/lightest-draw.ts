import { newBlock, newOption, newPack } from '../../plan/defaults.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Outing } from '../../plan/schema/outing.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { quickRun, scenarioOf } from '../scenario.ts';

/** A block so large that its voltage hardly moves [A·h], and so stiff [Ω]. */
const largeAh = 2000;
const stiffOhm = 1e-4;

/**
 * Average current over one round of the outing [A] from a pack of this chemistry and number of cells that hardly sags
 * and weighs nothing: less is drawn from no real one. It depends on nothing else of the candidate, so that it is the
 * same whichever candidate asks first.
 */
export function lightestDrawA(
  plan: Plan,
  outing: Outing,
  chemistry: Block['chemistry'],
  cells: number,
): number {
  const block: Block = {
    ...newBlock(),
    chemistry,
    cellGroups: cells,
    capacityAh: largeAh,
    rating: { kind: 'exponent', exponent: 1 },
    resistanceOhm: stiffOhm,
    massKg: 0,
  };
  const roundMin = outing.legs.reduce((sum, { durationMin }) => sum + durationMin, 0);
  const once = { ...outing, longestMin: Math.min(outing.longestMin, Math.max(1, roundMin)) };
  const option = newOption([], { ...newPack(block, 1), linkResistanceOhm: 0 });
  return quickRun(scenarioOf(plan, option, once)).averageCurrentA;
}
