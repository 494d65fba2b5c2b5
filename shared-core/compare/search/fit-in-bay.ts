/** Length, width, height [mm]. */
export type Size = readonly [lengthMm: number, widthMm: number, heightMm: number];

/** `not-found`: no placement was found, but not every one was tried. */
export type BayVerdict = 'fits' | 'does-not-fit' | 'not-found';

interface Placed {
  readonly at: Size;
  readonly size: Size;
}

/** Most blocks for which every placement is tried. */
export const exactUpTo = 6;
/** Placements tried before the search gives up. */
const mostTrials = 400_000;

/**
 * Whether equal blocks go into a box-shaped bay, edges parallel to its walls.
 *
 * A grid in one orientation is tried first. Up to six blocks the rest is tried exhaustively: any placement can be pushed
 * towards one corner until each coordinate is a sum of block edges, so only such coordinates are tried, in rising order;
 * a branch ends when the volume left ahead is too small (derived; normal patterns after Herz, IBM J. Res. Dev. 16 (1972)
 * 462). Beyond six blocks only the grids are tried.
 *
 * @param block outer size of one block [mm], above 0
 * @param count blocks, at least 1
 * @param upright true where the block must stand on its bottom (flooded lead)
 */
export function fitInBay(block: Size, count: number, bay: Size, upright = false): BayVerdict {
  const turns = orientations(block, upright).filter((turn) =>
    turn.every((edge, axis) => edge <= bay[axis]!),
  );
  const volume = block[0] * block[1] * block[2];
  if (turns.length === 0 || count * volume > bay[0] * bay[1] * bay[2] * (1 + 1e-12))
    return 'does-not-fit';
  const inGrid = (turn: Size) =>
    turn.reduce((product, edge, axis) => product * Math.floor(bay[axis]! / edge + 1e-9), 1);
  if (turns.some((turn) => inGrid(turn) >= count)) return 'fits';
  return count <= exactUpTo ? tryAll(turns, count, bay, volume) : 'not-found';
}

/** The distinct ways to set a block down along the walls. */
export function orientations([length, width, height]: Size, upright: boolean): Size[] {
  const all: Size[] = [
    [length, width, height],
    [width, length, height],
  ];
  if (!upright) {
    all.push([length, height, width], [height, length, width]);
    all.push([width, height, length], [height, width, length]);
  }
  return all.filter(
    (one, place) =>
      all.findIndex((other) => other.every((edge, axis) => edge === one[axis])) === place,
  );
}

/** Sums of up to `most` edges that leave room for one more block. */
function sums(edges: readonly number[], most: number, room: number): number[] {
  const found = new Set([0]);
  let latest = [0];
  for (let round = 0; round < most; round += 1) {
    latest = [...new Set(latest.flatMap((sum) => edges.map((edge) => sum + edge)))].filter(
      (sum) => sum <= room && !found.has(sum),
    );
    for (const sum of latest) found.add(sum);
  }
  return [...found].toSorted((one, other) => one - other);
}

function tryAll(turns: readonly Size[], count: number, bay: Size, volume: number): BayVerdict {
  const along = [0, 1, 2].map((axis) => {
    const edges = [...new Set(turns.map((turn) => turn[axis]!))];
    return sums(edges, count - 1, bay[axis]! - Math.min(...edges));
  });
  const spots: Size[] = along[0]!.flatMap((x) =>
    along[1]!.flatMap((y) => along[2]!.map((z): Size => [x, y, z])),
  );
  const placed: Placed[] = [];
  let trials = 0;
  const place = (from: number): boolean => {
    if (placed.length === count) return true;
    for (let spot = from; spot < spots.length; spot += 1) {
      const at = spots[spot]!;
      if (roomAhead(at[0], placed, bay) < (count - placed.length) * volume * (1 - 1e-12))
        return false;
      for (const size of turns) {
        trials += 1;
        if (trials > mostTrials) return false;
        if (!isFree(at, size, placed, bay)) continue;
        placed.push({ at, size });
        if (place(spot + 1)) return true;
        placed.pop();
      }
    }
    return false;
  };
  if (place(0)) return 'fits';
  return trials > mostTrials ? 'not-found' : 'does-not-fit';
}

/** Volume of the bay beyond x that no block placed so far takes up. */
function roomAhead(x: number, placed: readonly Placed[], bay: Size): number {
  return placed.reduce(
    (room, { at, size }) =>
      room - Math.max(0, Math.min(size[0], at[0] + size[0] - x)) * size[1] * size[2],
    (bay[0] - x) * bay[1] * bay[2],
  );
}

function isFree(at: Size, size: Size, placed: readonly Placed[], bay: Size): boolean {
  if (at.some((start, axis) => start + size[axis]! > bay[axis]! + 1e-9)) return false;
  return placed.every((other) =>
    at.some(
      (start, axis) =>
        start + size[axis]! <= other.at[axis]! + 1e-9 ||
        other.at[axis]! + other.size[axis]! <= start + 1e-9,
    ),
  );
}
