import { z } from 'zod';
import { line, quantity, unknownQuantity } from './field.ts';

/**
 * What measurements say about a block. Where a block carries this section, these values stand in place of rating,
 * resistance and rest voltages assumed from its label; the label itself stays as it was.
 */
export const fittedSchema = z
  .object({
    source: line(
      { title: 'Source', help: 'Which readings or log the values were fitted from, and when.' },
      300,
    ),
    temperatureC: quantity({
      title: 'Temperature of the fit',
      unit: '°C',
      min: -30,
      max: 80,
      help: 'Block temperature at which capacity and resistances below hold.',
    }),
    ageYears: quantity({
      title: 'Age at the fit',
      unit: 'years',
      min: 0,
      max: 30,
      help: 'Ageing is reckoned from here on.',
    }),
    cyclesDone: quantity({ title: 'Cycles at the fit', min: 0, max: 20000 }),
    capacityAh: quantity({
      title: 'Charge when full',
      unit: 'A·h',
      min: 0,
      aboveMin: true,
      max: 4000,
      help: 'In both wells, from full to the lowest point of the open-circuit curve.',
    }),
    availableShare: quantity({
      title: 'Share of the available well',
      min: 0,
      aboveMin: true,
      max: 1,
      help: '1 means no rate loss.',
    }),
    levellingPerMin: quantity({
      title: 'Levelling rate of the wells',
      unit: '1/min',
      min: 0,
      max: 60,
    }),
    resistanceOhm: quantity({
      title: 'Ohmic resistance',
      unit: 'Ω',
      min: 0,
      max: 10,
      help: 'Of the whole block, at the temperature of the fit.',
    }),
    polarisationOhm: quantity({ title: 'Polarisation resistance', unit: 'Ω', min: 0, max: 10 }),
    polarisationS: quantity({
      title: 'Polarisation time',
      unit: 's',
      min: 0,
      aboveMin: true,
      max: 20000,
    }),
    kneeOhm: quantity({
      title: 'Knee resistance',
      unit: 'Ω',
      min: 0,
      max: 10,
      help: 'Grows with 1/s - 1 as the head s of the available well falls.',
    }),
    resistanceColdRatePerK: quantity({
      title: 'Resistance rise in the cold',
      unit: '1/K',
      min: 0,
      max: 0.2,
      help: 'Resistances scale with exp(rate × (temperature of the fit - temperature)).',
    }),
    heatCapacityJPerK: unknownQuantity({
      title: 'Heat capacity',
      unit: 'J/K',
      min: 0,
      aboveMin: true,
      max: 1e6,
      help: 'Not known: usual for chemistry and capacity.',
    }),
    heatResistanceKPerW: unknownQuantity({
      title: 'Heat resistance to the air',
      unit: 'K/W',
      min: 0,
      aboveMin: true,
      max: 1000,
      help: 'Not known: estimated from the size.',
    }),
    openCircuit: z
      .array(
        z.object({
          chargePercent: quantity({ title: 'Charge', unit: '%', min: 0, max: 100 }),
          voltageV: quantity({ title: 'Open-circuit voltage', unit: 'V', min: 0, max: 250 }),
        }),
      )
      .min(2)
      .max(80)
      .meta({
        title: 'Open-circuit curve',
        help: 'Of the whole block, from 0 to 100 %, charge and voltage rising.',
      }),
  })
  .meta({
    title: 'Fitted values',
    help: "Measured behaviour that replaces the label's figures in every simulation.",
  });
export type Fitted = z.infer<typeof fittedSchema>;
