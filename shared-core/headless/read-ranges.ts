import { inputIds, type InputId } from '../compare/inputs/input.ts';
import type { OwnRanges } from '../compare/inputs/uncertain-inputs.ts';
import type { VerbOption } from './verb.ts';

export const rangeOption: VerbOption = {
  name: '--range',
  value: 'ID=LOW..HIGH',
  meaning: 'range of an assumption, 10th to 90th percentile, in its own unit; may be repeated',
  repeats: true,
};

/** Assumptions whose errors add; all others multiply, and zero or less would have no meaning there. */
const mayBeNegative: readonly InputId[] = ['temperature'];

const isInput = (word: string): word is InputId => inputIds.some((id) => id === word);

/** Reads `capacity=16..19` and the like, or says what is wrong. */
export function readRanges(
  words: readonly string[],
):
  | { readonly ok: true; readonly ranges: OwnRanges }
  | { readonly ok: false; readonly line: string } {
  const ranges: OwnRanges = {};
  for (const word of words) {
    const [, id = '', from = '', to = ''] = /^([^=]*)=(.*?)\.\.(.*)$/.exec(word) ?? [];
    if (!isInput(id)) {
      return {
        ok: false,
        line: `--range: ${word} names no assumption. Write ID=LOW..HIGH with one of: ${inputIds.join(', ')}.`,
      };
    }
    const low = from.trim() === '' ? Number.NaN : Number(from);
    const high = to.trim() === '' ? Number.NaN : Number(to);
    const positive = mayBeNegative.includes(id) || low > 0;
    if (!Number.isFinite(low) || !Number.isFinite(high) || low > high || !positive) {
      return {
        ok: false,
        line: `--range: ${word} is no range. Write two rising numbers${mayBeNegative.includes(id) ? '' : ' above 0'}, for example capacity=16..19.`,
      };
    }
    ranges[id] = { low, high };
  }
  return { ok: true, ranges };
}
