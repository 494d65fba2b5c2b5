import { z } from 'zod';
import { blockSchema } from './block.ts';
import { chargerSchema } from './charger.ts';
import { controllerSchema } from './controller.ts';
import { identifier, line, paragraph, quantity, unknownQuantity } from './field.ts';

/** How one block of the pack differs from the rest: weaker, older, less full, or another type altogether. */
export const differenceSchema = z
  .object({
    string: quantity({ title: 'String', min: 1, max: 12, integer: true }),
    position: quantity({
      title: 'Position in the string',
      min: 1,
      max: 40,
      integer: true,
      help: '1 is at the negative end.',
    }),
    capacityPercent: quantity({ title: 'Capacity against new', unit: '%', min: 1, max: 200 }),
    resistancePercent: quantity({ title: 'Resistance against new', unit: '%', min: 10, max: 2000 }),
    startPercent: unknownQuantity({
      title: 'Charge at the start',
      unit: '%',
      min: 0,
      max: 100,
      help: 'Not known: the same as the rest of the pack.',
    }),
    restVoltageV: unknownQuantity({
      title: 'Rest voltage read',
      unit: 'V',
      min: 0,
      max: 200,
      help: 'Meter reading after some hours without load, for the findings.',
    }),
    ageYears: unknownQuantity({ title: 'Age', unit: 'years', min: 0, max: 30 }),
    replacement: blockSchema.nullable().meta({ title: 'Another type of block stands here' }),
  })
  .meta({ title: 'Block that differs' });
export type Difference = z.infer<typeof differenceSchema>;

/** Cell groups inside sealed blocks that differ from their neighbours (lithium imbalance). */
export const groupDifferenceSchema = z
  .object({
    string: quantity({ title: 'String', min: 1, max: 12, integer: true }),
    position: quantity({ title: 'Position in the string', min: 1, max: 40, integer: true }),
    group: quantity({ title: 'Cell group', min: 1, max: 40, integer: true }),
    capacityPercent: quantity({
      title: 'Capacity against the others',
      unit: '%',
      min: 1,
      max: 200,
    }),
    resistancePercent: quantity({
      title: 'Resistance against the others',
      unit: '%',
      min: 10,
      max: 2000,
    }),
    startPercent: unknownQuantity({ title: 'Charge at the start', unit: '%', min: 0, max: 100 }),
  })
  .meta({ title: 'Cell group that differs' });
export type GroupDifference = z.infer<typeof groupDifferenceSchema>;

export const packSchema = z
  .object({
    block: blockSchema,
    seriesCount: quantity({ title: 'Blocks in series', min: 1, max: 40, integer: true }),
    parallelCount: quantity({ title: 'Strings in parallel', min: 1, max: 12, integer: true }),
    linkResistanceOhm: quantity({
      title: 'Resistance of links and leads',
      unit: 'Ω',
      min: 0,
      max: 1,
      help: 'Of each string: lugs, links and fuse together. 1 to 4 mΩ is usual.',
    }),
    stringFuseA: unknownQuantity({
      title: 'Fuse of each string',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 2000,
    }),
    mainFuseA: unknownQuantity({
      title: 'Main fuse',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 2000,
    }),
    ageYears: quantity({ title: 'Age', unit: 'years', min: 0, max: 30 }),
    cyclesDone: quantity({
      title: 'Cycles done',
      min: 0,
      max: 20000,
      help: 'Full-depth equivalents so far.',
    }),
    differences: z.array(differenceSchema).max(480).meta({ title: 'Blocks that differ' }),
    groupDifferences: z
      .array(groupDifferenceSchema)
      .max(480)
      .meta({ title: 'Cell groups that differ' }),
  })
  .meta({ title: 'Pack' });
export type Pack = z.infer<typeof packSchema>;

/** One candidate: a pack with its charger. */
export const optionSchema = z
  .object({
    id: identifier(),
    name: line({ title: 'Name' }),
    note: paragraph({ title: 'Note' }),
    pack: packSchema,
    startPercent: quantity({ title: 'Charge at the start', unit: '%', min: 0, max: 100 }),
    depthLimitPercent: unknownQuantity({
      title: 'Stop at depth of discharge',
      unit: '%',
      min: 1,
      max: 100,
      help: 'To spare the pack. Not set: until a cutoff trips.',
    }),
    charger: chargerSchema.nullable().meta({ title: 'Charger' }),
    portLimitA: unknownQuantity({
      title: 'Charge port limit',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 500,
      help: 'What port and lead carry continuously.',
    }),
    controller: controllerSchema.nullable().meta({
      title: 'Own controller',
      help: 'Only where this option needs another controller than the machine has.',
    }),
  })
  .meta({ title: 'Option' });
export type Option = z.infer<typeof optionSchema>;
