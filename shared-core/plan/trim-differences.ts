import type { Pack } from './schema/option.ts';

/**
 * Drops the differences that point at blocks or cell groups the pack no longer has, after its counts were lowered.
 * Without this a smaller pack could not be saved.
 */
export function trimDifferences(pack: Pack): Pack {
  const stands = (place: { string: number; position: number }): boolean =>
    place.string <= pack.parallelCount && place.position <= pack.seriesCount;
  return {
    ...pack,
    differences: pack.differences.filter(stands),
    groupDifferences: pack.groupDifferences.filter(
      (place) => stands(place) && place.group <= pack.block.cellGroups,
    ),
  };
}
