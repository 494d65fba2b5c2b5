import { expect, test } from 'vitest';
import { fitInBay, type Size } from '#core/compare/search/fit-in-bay.ts';

/** Exhaustive placement on a grid of whole units, first free cell outward: an independent method. [R] */
function bruteForce(block: Size, count: number, bay: Size): boolean {
  const [L, W, H] = bay;
  const taken = new Uint8Array(L * W * H);
  const [a, b, c] = block;
  const turns = [
    [a, b, c],
    [a, c, b],
    [b, a, c],
    [b, c, a],
    [c, a, b],
    [c, b, a],
  ];
  const fill = (cell: number, left: number): boolean => {
    if (left === 0) return true;
    if (cell >= taken.length) return false;
    const x = cell % L;
    const y = Math.floor(cell / L) % W;
    const z = Math.floor(cell / (L * W));
    for (const [l, w, h] of turns) {
      if (x + l! > L || y + w! > W || z + h! > H) continue;
      const cells: number[] = [];
      for (let k = 0; k < h!; k += 1)
        for (let j = 0; j < w!; j += 1)
          for (let i = 0; i < l!; i += 1) cells.push(x + i + L * (y + j + W * (z + k)));
      if (cells.some((each) => taken[each] === 1)) continue;
      for (const each of cells) taken[each] = 1;
      if (fill(cell + 1, left - 1)) return true;
      for (const each of cells) taken[each] = 0;
    }
    return fill(cell + 1, left);
  };
  return fill(0, count);
}

test('up to six blocks the verdict is that of exhaustive placement', () => {
  const blocks: Size[] = [
    [2, 1, 1],
    [3, 2, 1],
    [3, 2, 2],
    [3, 1, 1],
  ];
  const bays: Size[] = [
    [3, 3, 1],
    [3, 3, 2],
    [4, 3, 2],
    [5, 5, 1],
    [4, 4, 1],
    [5, 3, 2],
  ];
  for (const block of blocks)
    for (const bay of bays)
      for (let count = 1; count <= 6; count += 1) {
        const expected = bruteForce(block, count, bay) ? 'fits' : 'does-not-fit';
        expect(
          fitInBay(block, count, bay),
          `${count} of ${block.join(' x ')} in ${bay.join(' x ')}`,
        ).toBe(expected);
      }
});

test('four blocks go round a hole where no grid holds them', () => {
  expect(fitInBay([151, 98, 101], 4, [249, 249, 101])).toBe('fits');
  expect(fitInBay([151, 98, 101], 4, [248, 249, 101])).toBe('does-not-fit');
});

test('a block that must stand upright is not laid on its side', () => {
  expect(fitInBay([181, 77, 167], 1, [181, 167, 77])).toBe('fits');
  expect(fitInBay([181, 77, 167], 1, [181, 167, 77], true)).toBe('does-not-fit');
});
