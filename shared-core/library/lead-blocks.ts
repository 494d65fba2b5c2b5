import { chemistryTraits } from '../battery/chemistry.ts';
import { defaultResistanceOhm } from '../battery/default-resistance.ts';
import { newBlock } from '../plan/defaults.ts';
import type { Block } from '../plan/schema/block.ts';
import { asOnSheets, type FigureRange, type Part } from './part.ts';

/** A case size of the trade: capacity over 20 h, mass, length, width, height over the terminals. */
type LeadRow = readonly [
  capacityAh: number,
  massKg: number,
  lengthMm: number,
  widthMm: number,
  heightMm: number,
];

/** Sealed 12 V blocks. Sizes and masses from memory of the usual case sizes; makers differ by a few millimetres. */
const sealed12V: readonly LeadRow[] = [
  [5, 1.7, 90, 70, 107],
  [7, 2.2, 151, 65, 100],
  [9, 2.6, 151, 65, 100],
  [12, 3.7, 151, 98, 101],
  [15, 4.3, 181, 77, 167],
  [18, 5.5, 181, 77, 167],
  [22, 6.3, 181, 77, 167],
  [26, 8.3, 166, 175, 125],
  [33, 10.3, 195, 130, 168],
  [40, 13.2, 197, 165, 170],
  [55, 16.8, 229, 138, 212],
  [75, 23.5, 260, 168, 214],
  [100, 30, 330, 173, 220],
];

/** Sealed 6 V blocks. From memory. */
const sealed6V: readonly LeadRow[] = [
  [5, 0.9, 70, 47, 107],
  [7, 1.2, 151, 34, 100],
  [10, 1.8, 151, 50, 100],
  [12, 2.0, 151, 50, 100],
];

/** Flooded 12 V blocks of starter and leisure kind, and a deep-cycle one. From memory. */
const flooded12V: readonly LeadRow[] = [
  [18, 6.2, 181, 77, 167],
  [30, 9.5, 187, 127, 220],
  [45, 12, 207, 175, 190],
  [60, 15.5, 242, 175, 190],
  [75, 19, 278, 175, 190],
  [100, 25, 353, 175, 190],
];

type LeadKind = 'agm' | 'gel' | 'flooded';

const kindNames: Readonly<Record<LeadKind, string>> = {
  agm: 'AGM',
  gel: 'Gel',
  flooded: 'Flooded',
};

function leadPart(kind: LeadKind, cellGroups: 3 | 6, row: LeadRow): Part<Block> {
  const [capacityAh, massKg, lengthMm, widthMm, heightMm] = row;
  const id = `${kind}-${cellGroups * 2}v-${capacityAh}ah`;
  const name = `${kindNames[kind]} ${cellGroups * 2} V ${capacityAh} A·h`;
  const typicalOhm = asOnSheets(
    defaultResistanceOhm({ chemistry: kind, cellGroups, capacityAh, bms: null }),
  );
  const value: Block = {
    ...newBlock(),
    name,
    chemistry: kind,
    cellGroups,
    capacityAh,
    ratedHours: 20,
    resistanceOhm: typicalOhm,
    continuousDischargeA: asOnSheets(3 * capacityAh),
    peakDischargeA: asOnSheets(10 * capacityAh),
    maximumChargeA: asOnSheets((kind === 'gel' ? 0.2 : 0.3) * capacityAh),
    chargeEndVoltageV: null,
    massKg,
    lengthMm,
    widthMm,
    heightMm,
    partId: id,
  };
  return {
    id,
    group: `${kindNames[kind]}, ${cellGroups * 2} V`,
    name,
    value,
    figures: leadRanges(value, typicalOhm),
    sourceClass: 'from-memory',
  };
}

function leadRanges(block: Block, typicalOhm: number): FigureRange[] {
  const { low, likely, high } = chemistryTraits[block.chemistry].exponent;
  return [
    {
      field: 'resistanceOhm',
      unit: 'Ω',
      low: asOnSheets(typicalOhm * 0.83),
      typical: typicalOhm,
      high: asOnSheets(typicalOhm * 1.2),
      sourceClass: 'common-practice',
      source:
        'New 12 V blocks: 7 A·h 22 to 30 mΩ, 12 A·h 14 to 20, 20 A·h 10 to 14, 40 A·h up to 8; worn two to five times as much. Common practice, no source.',
    },
    {
      field: 'rating.exponent',
      unit: '',
      low,
      typical: likely,
      high,
      sourceClass: 'common-practice',
      source:
        'Peukert exponent of lead 1.10 to 1.25. Common practice, no source; rating points of the sheet are better.',
    },
    {
      field: 'maximumChargeA',
      unit: 'A',
      low: asOnSheets(0.1 * block.capacityAh),
      typical: asOnSheets(0.2 * block.capacityAh),
      high: block.maximumChargeA ?? 0.3 * block.capacityAh,
      sourceClass: 'published',
      source:
        'Makers allow up to 0.25 to 0.30 of the capacity in amperes; below 0.1 the charge gets slow.',
    },
  ];
}

/** Lead blocks of the library, sealed and flooded. */
export const leadBlocks: readonly Part<Block>[] = [
  ...sealed12V.map((row) => leadPart('agm', 6, row)),
  ...sealed6V.map((row) => leadPart('agm', 3, row)),
  ...sealed12V.filter(([capacityAh]) => capacityAh >= 12).map((row) => leadPart('gel', 6, row)),
  ...flooded12V.map((row) => leadPart('flooded', 6, row)),
];
