import type { Block } from '../../plan/schema/block.ts';
import type { Fitted } from '../../plan/schema/fitted.ts';
import { fitCurves } from './fit-curves.ts';

/**
 * Measured behaviour of a block that stands in place of its label: fitted on the bench, or found from discharge curves;
 * null where only rated points or an exponent are known.
 */
export function measuredBehaviour(block: Block): Fitted | null {
  if (block.fitted !== null) return block.fitted;
  return block.rating.kind === 'curves' ? fitCurves(block, block.rating.curves).fitted : null;
}

/** The block with the behaviour its curves show as fitted values, so that single figures of it can be varied. */
export function withMeasuredBehaviour(block: Block): Block {
  const fitted = measuredBehaviour(block);
  return fitted === block.fitted ? block : { ...block, fitted };
}
