import { z } from 'zod';
import { chemistrySchema } from './block.ts';
import { line, quantity, unknownQuantity } from './field.ts';

/** A charger as its label describes it. */
export const chargerSchema = z
  .object({
    name: line({ title: 'Name' }),
    kind: z.enum(['staged', 'constant-voltage', 'wall-supply']).meta({
      title: 'Kind',
      help: 'staged: current, then voltage, then float or stop. constant-voltage: current limit then voltage for ever. wall-supply: an unregulated plug-in supply.',
    }),
    chemistries: z
      .array(chemistrySchema)
      .min(1)
      .max(5)
      .meta({ title: 'Made for', help: 'Chemistries the label names.' }),
    cellGroups: quantity({
      title: 'Cell groups',
      min: 1,
      max: 40,
      integer: true,
      help: 'Cells in series the charger is made for: 12 for 24 V lead, 8 for 24 V LFP, 7 for 24 V class NMC.',
    }),
    currentA: quantity({ title: 'Charge current', unit: 'A', min: 0, aboveMin: true, max: 500 }),
    endVoltageV: unknownQuantity({
      title: 'End voltage',
      unit: 'V',
      min: 1,
      max: 200,
      help: 'Highest voltage at 25 °C; for a wall supply, its voltage without load.',
    }),
    floatVoltageV: unknownQuantity({
      title: 'Float voltage',
      unit: 'V',
      min: 1,
      max: 200,
      help: 'Held after the charge. Leave unknown where the charger stops instead.',
    }),
    tailCurrentA: unknownQuantity({
      title: 'Ends at current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 100,
    }),
    sourceResistanceOhm: unknownQuantity({
      title: 'Source resistance',
      unit: 'Ω',
      min: 0,
      max: 100,
      help: 'Only for a wall supply: how far its voltage falls with current.',
    }),
    compensationMvPerCellK: unknownQuantity({
      title: 'Temperature compensation',
      unit: 'mV/K per cell',
      min: -10,
      max: 0,
      help: '0 when the charger has none.',
    }),
    equalises: z.boolean().meta({ title: 'Sends equalising or desulphating pulses' }),
    maximumHours: unknownQuantity({
      title: 'Stops after',
      unit: 'h',
      min: 0,
      aboveMin: true,
      max: 200,
    }),
    efficiencyPercent: unknownQuantity({ title: 'Mains efficiency', unit: '%', min: 10, max: 100 }),
    price: unknownQuantity({ title: 'Price', min: 0, max: 100000 }),
    partId: z.string().max(64).nullable().meta({ title: 'Taken from part' }),
  })
  .meta({ title: 'Charger' });
export type Charger = z.infer<typeof chargerSchema>;
