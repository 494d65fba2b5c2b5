import { buildBlockModel } from '../battery/build-block-model.ts';
import type { BlockConditions, BlockModel } from '../battery/block-model.ts';
import type { Block } from '../plan/schema/block.ts';
import type { Difference, GroupDifference, Option, Pack } from '../plan/schema/option.ts';
import { groupModel } from './group-model.ts';
import type { PackModel, PackString, PackUnit } from './pack-model.ts';

/**
 * Lays a pack out as strings of units, in the conditions of a run. Blocks that cannot behave differently (same type, same
 * state, same string) become one unit with a count; strings that cannot behave differently become one string. This is
 * exact: equal units under the same current stay equal.
 *
 * @param ambientC temperature of all blocks at the start [°C]
 * @param midPointTapped true when an accessory draws from the middle of each series string
 */
export function expandPack(
  option: Pick<Option, 'pack' | 'startPercent'>,
  ambientC: number,
  midPointTapped = false,
): PackModel {
  const { pack } = option;
  const strings: PackString[] = [];
  const seen = new Map<string, number>();
  const build = modelBuilder(pack, ambientC);
  for (let number = 1; number <= pack.parallelCount; number += 1) {
    const differences = pack.differences.filter((difference) => difference.string === number);
    const groups = pack.groupDifferences.filter((difference) => difference.string === number);
    const key = JSON.stringify([differences.map(withoutString), groups.map(withoutString)]);
    const twin = seen.get(key);
    if (twin !== undefined) {
      const known = strings[twin]!;
      strings[twin] = { ...known, strings: [...known.strings, number] };
      continue;
    }
    seen.set(key, strings.length);
    strings.push({
      units: stringUnits(option, differences, groups, build, midPointTapped),
      strings: [number],
      linkOhm: pack.linkResistanceOhm,
      fuseA: pack.stringFuseA,
    });
  }
  const capacityAh = strings.reduce(
    (sum, string) =>
      sum + string.strings.length * Math.min(...string.units.map((unit) => unit.model.capacityAh)),
    0,
  );
  return { strings, mainFuseA: pack.mainFuseA, capacityAh };
}

const withoutString = <T extends { string: number }>({ string: _string, ...rest }: T) => rest;

type ModelBuilder = (difference: Difference | undefined) => { block: Block; model: BlockModel };

/** Builds each distinct block once. */
function modelBuilder(pack: Pack, ambientC: number): ModelBuilder {
  const built = new Map<string, { block: Block; model: BlockModel }>();
  return (difference) => {
    const block = difference?.replacement ?? pack.block;
    const conditions: BlockConditions = {
      temperatureC: ambientC,
      ageYears: difference?.ageYears ?? pack.ageYears,
      cyclesDone: pack.cyclesDone,
      capacityPercent: difference?.capacityPercent ?? 100,
      resistancePercent: difference?.resistancePercent ?? 100,
    };
    const key = JSON.stringify([difference?.replacement ?? null, conditions]);
    let entry = built.get(key);
    if (entry === undefined) {
      entry = { block, model: buildBlockModel(block, conditions) };
      built.set(key, entry);
    }
    return entry;
  };
}

function stringUnits(
  option: Pick<Option, 'pack' | 'startPercent'>,
  differences: readonly Difference[],
  groups: readonly GroupDifference[],
  build: ModelBuilder,
  midPointTapped: boolean,
): PackUnit[] {
  const { pack } = option;
  const units: PackUnit[] = [];
  const placeOf = new Map<string, number>();
  const add = (key: string, unit: PackUnit) => {
    const twin = placeOf.get(key);
    if (twin === undefined) {
      placeOf.set(key, units.length);
      units.push(unit);
      return;
    }
    const known = units[twin]!;
    units[twin] = {
      ...known,
      count: known.count + unit.count,
      positions: [...known.positions, ...unit.positions],
    };
  };
  for (let position = 1; position <= pack.seriesCount; position += 1) {
    const difference = differences.find((candidate) => candidate.position === position);
    const { block, model } = build(difference);
    const belowTap = midPointTapped && position <= Math.floor(pack.seriesCount / 2);
    const unit: PackUnit = {
      model,
      count: 1,
      startCharge: (difference?.startPercent ?? option.startPercent) / 100,
      positions: [position],
      group: null,
      name: block.name,
      bms: block.bms,
      belowTap,
    };
    const ownGroups = groups.filter(
      (candidate) => candidate.position === position && candidate.group <= block.cellGroups,
    );
    if (ownGroups.length === 0) {
      add(
        JSON.stringify([difference === undefined ? null : withoutPosition(difference), belowTap]),
        unit,
      );
    } else {
      splitIntoGroups(unit, ownGroups).forEach((part, index) => add(`${position}/${index}`, part));
    }
  }
  return units;
}

const withoutPosition = ({ position: _position, ...rest }: Difference) => rest;

/** One unit for all normal cell groups of a block, one for each that differs. */
function splitIntoGroups(unit: PackUnit, groups: readonly GroupDifference[]): PackUnit[] {
  const { cellGroups } = unit.model;
  const differing = new Map(groups.map((group) => [group.group, group]));
  const normal = Array.from({ length: cellGroups }, (_, index) => index + 1).filter(
    (group) => !differing.has(group),
  );
  const parts: PackUnit[] = [...differing.values()].map((group) => ({
    ...unit,
    model: groupModel(unit.model, group.capacityPercent / 100, group.resistancePercent / 100),
    startCharge: group.startPercent === null ? unit.startCharge : group.startPercent / 100,
    group: group.group,
  }));
  if (normal.length > 0) {
    parts.unshift({
      ...unit,
      model: groupModel(unit.model, 1, 1),
      count: normal.length,
      group: normal[0]!,
    });
  }
  return parts;
}
