import { z } from 'zod';
import { accessorySchema, converterSchema } from './accessory.ts';
import { controllerSchema } from './controller.ts';
import { driveSchema } from './drive.ts';
import { line, paragraph, quantity, unknownQuantity } from './field.ts';

/** The room for the pack and what the frame carries. */
export const baySchema = z
  .object({
    lengthMm: unknownQuantity({
      title: 'Bay length',
      unit: 'mm',
      min: 0,
      aboveMin: true,
      max: 5000,
    }),
    widthMm: unknownQuantity({ title: 'Bay width', unit: 'mm', min: 0, aboveMin: true, max: 5000 }),
    heightMm: unknownQuantity({
      title: 'Bay height',
      unit: 'mm',
      min: 0,
      aboveMin: true,
      max: 5000,
    }),
    massLimitKg: unknownQuantity({
      title: 'Pack mass allowed',
      unit: 'kg',
      min: 0,
      aboveMin: true,
      max: 2000,
    }),
  })
  .meta({ title: 'Battery bay' });

export const machineSchema = z
  .object({
    name: line({ title: 'Name' }),
    note: paragraph({ title: 'Note' }),
    controller: controllerSchema,
    harnessResistanceOhm: quantity({
      title: 'Cable resistance, pack to controller',
      unit: 'Ω',
      min: 0,
      max: 2,
      help: 'Out and back, with switch and connectors. 3 to 15 mΩ is usual.',
    }),
    converter: converterSchema.nullable().meta({ title: 'Step-down converter' }),
    accessories: z.array(accessorySchema).max(40).meta({ title: 'Accessories' }),
    bay: baySchema,
    drive: driveSchema.nullable().meta({
      title: 'Drive',
      help: 'Motors, gears, masses and brakes. Without it the legs of an outing are given in amperes or watts.',
    }),
  })
  .meta({ title: 'Machine' });
export type Machine = z.infer<typeof machineSchema>;
