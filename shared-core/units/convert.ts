import type { Unit } from './unit.ts';

/**
 * A value in another unit of the same kind.
 *
 * A unit of another kind is a mistake in the program, not of the user, hence the exception.
 */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from.symbol === to.symbol) return value;
  if (from.kind !== to.kind) {
    throw new Error(`${from.symbol} (${from.kind}) does not convert to ${to.symbol} (${to.kind})`);
  }
  return (value * from.factor + from.offset - to.offset) / to.factor;
}
