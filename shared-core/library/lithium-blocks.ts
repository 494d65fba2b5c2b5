import { defaultResistanceOhm } from '../battery/default-resistance.ts';
import { newBlock } from '../plan/defaults.ts';
import type { Block, Bms } from '../plan/schema/block.ts';
import { asOnSheets, type FigureRange, type Part } from './part.ts';

type LithiumKind = 'lfp' | 'nmc';

/** What sealed packs of a chemistry have in common. Common practice, no source, but for the voltages of the cells. */
const kinds = {
  lfp: {
    label: 'LFP',
    nominalV: 3.2,
    whPerKg: 105,
    whPerLitre: 170,
    window: { groupLowV: 2.5, groupHighV: 3.75, reconnectV: 2.9 },
    ratedHours: 5,
  },
  nmc: {
    label: 'NMC',
    nominalV: 3.65,
    whPerKg: 165,
    whPerLitre: 280,
    window: { groupLowV: 2.8, groupHighV: 4.25, reconnectV: 3.2 },
    ratedHours: 5,
  },
} as const;

/** Packs: nominal class [V], cell groups, capacities [A·h]. */
const packRows: readonly (readonly [LithiumKind, number, number, readonly number[]])[] = [
  ['lfp', 12, 4, [6, 10, 12, 20, 30, 50, 100]],
  ['lfp', 24, 8, [6, 10, 20, 30, 50, 100]],
  ['lfp', 36, 12, [10, 20, 30, 50]],
  ['lfp', 48, 16, [10, 20, 30, 50, 100]],
  ['nmc', 24, 7, [8, 10, 14, 20, 30]],
  ['nmc', 36, 10, [8, 10, 14, 20, 30]],
  ['nmc', 48, 13, [10, 14, 20, 30]],
];

/** Bare cell groups, without BMS. */
const groupRows: readonly (readonly [LithiumKind, readonly number[]])[] = [
  ['lfp', [6, 15, 20, 50, 100]],
  ['nmc', [3, 10, 20, 50]],
];

/** BMS boards come in steps; the one that carries the usual discharge of a pack of this capacity. */
function usualBmsA(capacityAh: number): number {
  const wanted = Math.max(15, 1.2 * capacityAh);
  return [15, 20, 30, 40, 60, 100, 150].find((step) => step >= wanted) ?? 150;
}

function bmsFor(kind: LithiumKind, capacityAh: number): Bms {
  const continuousDischargeA = usualBmsA(capacityAh);
  return {
    continuousDischargeA,
    peakDischargeA: 2.5 * continuousDischargeA,
    peakSeconds: 1,
    continuousChargeA: asOnSheets(0.5 * capacityAh),
    ...kinds[kind].window,
  };
}

/** Edges of a usual lithium case against each other: length, width, height. From memory. */
const proportions = [1.5, 1, 1.2] as const;

/** Mass and outer size from the energy of a pack, edges to the next 5 mm. */
function sizes(
  energyWh: number,
  kind: LithiumKind,
): Pick<Block, 'massKg' | 'lengthMm' | 'widthMm' | 'heightMm'> {
  const { whPerKg, whPerLitre } = kinds[kind];
  const volumeMm3 = (1e6 * energyWh) / whPerLitre;
  const unitMm = Math.cbrt(volumeMm3 / (proportions[0] * proportions[1] * proportions[2]));
  const [lengthMm, widthMm, heightMm] = proportions.map(
    (share) => 5 * Math.ceil((share * unitMm) / 5),
  ) as [number, number, number];
  return { massKg: asOnSheets(energyWh / whPerKg), lengthMm, widthMm, heightMm };
}

function sizeRanges({ lengthMm, widthMm, heightMm }: Block): FigureRange[] {
  return Object.entries({ lengthMm, widthMm, heightMm }).flatMap(([field, typical]) =>
    typical === null
      ? []
      : [
          {
            field,
            unit: 'mm',
            low: asOnSheets(0.85 * typical),
            typical,
            high: asOnSheets(1.2 * typical),
            sourceClass: 'from-memory' as const,
            source:
              'From the usual energy per litre, LFP packs 170 W·h, NMC packs 280; cases of one energy differ widely in shape. From memory: measure the pack or read its sheet.',
          },
        ],
  );
}

function lithiumPart(
  kind: LithiumKind,
  cellGroups: number,
  capacityAh: number,
  id: string,
  name: string,
  group: string,
  bms: Bms | null,
): Part<Block> {
  const traits = kinds[kind];
  const typicalOhm = asOnSheets(
    defaultResistanceOhm({ chemistry: kind, cellGroups, capacityAh, bms }),
  );
  const value: Block = {
    ...newBlock(),
    name,
    chemistry: kind,
    cellGroups,
    capacityAh,
    ratedHours: traits.ratedHours,
    resistanceOhm: typicalOhm,
    continuousDischargeA: bms?.continuousDischargeA ?? asOnSheets(capacityAh),
    peakDischargeA: bms?.peakDischargeA ?? asOnSheets(3 * capacityAh),
    maximumChargeA: asOnSheets(0.5 * capacityAh),
    chargeEndVoltageV: null,
    bms,
    ...sizes(cellGroups * traits.nominalV * capacityAh, kind),
    partId: id,
  };
  return {
    id,
    group,
    name,
    value,
    figures: [resistanceRange(typicalOhm, bms !== null), ...sizeRanges(value)],
    sourceClass: 'common-practice',
  };
}

function resistanceRange(typicalOhm: number, withBms: boolean): FigureRange {
  return {
    field: 'resistanceOhm',
    unit: 'Ω',
    low: asOnSheets(typicalOhm * 0.6),
    typical: typicalOhm,
    high: asOnSheets(typicalOhm * 1.6),
    sourceClass: 'common-practice',
    source: withBms
      ? 'An LFP pack of eight groups has 10 to 40 mΩ with its BMS; other packs in proportion to groups and capacity. Common practice, no source.'
      : 'Cells alone, one second after the step. Common practice, no source.',
  };
}

/** Lithium packs with BMS, and bare cell groups. */
export const lithiumBlocks: readonly Part<Block>[] = [
  ...packRows.flatMap(([kind, classV, cellGroups, capacities]) =>
    capacities.map((capacityAh) => {
      const { label } = kinds[kind];
      const name = `${label} ${classV} V ${capacityAh} A·h (${cellGroups}S, BMS)`;
      const id = `${kind}-${classV}v-${capacityAh}ah`;
      return lithiumPart(
        kind,
        cellGroups,
        capacityAh,
        id,
        name,
        `${label} pack, ${classV} V`,
        bmsFor(kind, capacityAh),
      );
    }),
  ),
  ...groupRows.flatMap(([kind, capacities]) =>
    capacities.map((capacityAh) => {
      const { label } = kinds[kind];
      const name = `${label} cell group ${capacityAh} A·h`;
      return lithiumPart(
        kind,
        1,
        capacityAh,
        `${kind}-cell-${capacityAh}ah`,
        name,
        `${label} cell groups`,
        null,
      );
    }),
  ),
];
