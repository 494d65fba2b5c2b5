import { describe, expect, test } from 'vitest';
import { checkPlanText, decodeText } from '#electron/files/plan-text.ts';
import { decodeRecovery, encodeRecovery } from '#electron/files/recovery-format.ts';
import { planText } from '../../support/plan-text.ts';

/** Small deterministic generator (mulberry32, public domain), so that a failing seed can be repeated. */
const randomFrom = (seed: number) => () => {
  seed = (seed + 0x6d2b79f5) | 0;
  let mixed = Math.imul(seed ^ (seed >>> 15), 1 | seed);
  mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
  return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
};

const content = {
  name: 'Cart',
  savedAt: '2026-01-01T00:00:00.000Z',
  path: '/a.wain',
  text: planText(),
};

describe('a damaged plan file', () => {
  test('cut off at any byte is refused with a code, never taken for a plan', () => {
    const bytes = Buffer.from(planText().trimEnd());
    for (let length = 0; length < bytes.length; length += 1) {
      const text = decodeText(bytes.subarray(0, length));
      const checked = text === null ? null : checkPlanText(text, 'a.wain');
      expect(checked?.ok ?? false, `cut at ${length}`).toBe(false);
    }
  });

  test('with any one bit flipped gives a plan or a code, never an exception', () => {
    const seed = Number(process.env['SEED'] ?? 20260101);
    const random = randomFrom(seed);
    const whole = Buffer.from(planText());
    let refused = 0;
    for (let round = 0; round < 4000; round += 1) {
      const bytes = Buffer.from(whole);
      const at = Math.floor(random() * bytes.length);
      bytes[at] = (bytes[at] ?? 0) ^ (1 << Math.floor(random() * 8));
      const text = decodeText(bytes);
      const checked = text === null ? null : checkPlanText(text, 'a.wain');
      if (checked?.ok !== true) refused += 1;
      if (checked?.ok === false) expect(checked.code, `seed ${seed}, byte ${at}`).toMatch(/\w/);
    }
    expect(refused).toBeGreaterThan(1000);
  });
});

describe('a damaged recovery copy', () => {
  test('gives back what was written when nothing is damaged', () => {
    expect(decodeRecovery(encodeRecovery(content))).toEqual(content);
  });

  test('cut off at any byte gives nothing', () => {
    const bytes = encodeRecovery(content);
    for (let length = 0; length < bytes.length; length += 1) {
      expect(decodeRecovery(bytes.subarray(0, length)), `cut at ${length}`).toBeNull();
    }
  });

  test('with any one bit flipped gives nothing', () => {
    const bytes = encodeRecovery({ ...content, text: planText().slice(0, 2000) });
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      const at = bit >> 3;
      const kept = bytes[at] ?? 0;
      bytes[at] = kept ^ (1 << (bit & 7));
      const found = decodeRecovery(bytes);
      bytes[at] = kept;
      if (found !== null) throw new Error(`bit ${bit} went unseen`);
    }
  });

  test('with bytes added at the end gives nothing', () => {
    const bytes = encodeRecovery(content);
    expect(decodeRecovery(Buffer.concat([bytes, Buffer.from(' ')]))).toBeNull();
  });
});
