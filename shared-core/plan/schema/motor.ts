import { z } from 'zod';
import { line, unknownQuantity, quantity } from './field.ts';

/**
 * A permanent-magnet brushed motor as a hobbyist knows it: any two of winding resistance, speed per volt and a working
 * point are enough; the core fits the rest and says what it lacks.
 */
export const motorSchema = z
  .object({
    name: line({ title: 'Name' }),
    ratedVoltageV: quantity({
      title: 'Rated voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 200,
      help: 'From the label. The other readings hold at this voltage unless a test voltage is given.',
    }),
    testVoltageV: unknownQuantity({
      title: 'Test voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 200,
      help: 'Voltage at the terminals during the no-load and stall readings. Not known: the rated voltage.',
    }),
    noLoadRpm: unknownQuantity({
      title: 'Speed without load',
      unit: 'rpm',
      min: 0,
      aboveMin: true,
      max: 100000,
      help: 'Of the motor shaft, wheels off the ground.',
    }),
    noLoadCurrentA: unknownQuantity({ title: 'Current without load', unit: 'A', min: 0, max: 200 }),
    rpmPerVolt: unknownQuantity({
      title: 'Speed per volt',
      unit: 'rpm/V',
      min: 0,
      aboveMin: true,
      max: 10000,
      help: 'The speed constant, where the sheet states it.',
    }),
    windingOhm: unknownQuantity({
      title: 'Winding resistance',
      unit: 'Ω',
      min: 0,
      aboveMin: true,
      max: 100,
      help: 'With brushes, at 20 °C: volts over amps with the shaft held, or a four-wire reading.',
    }),
    stallCurrentA: unknownQuantity({
      title: 'Stall current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 5000,
      help: 'At the test voltage with the shaft held.',
    }),
    ratedCurrentA: unknownQuantity({
      title: 'Rated current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 2000,
      help: 'Continuous current from the label.',
    }),
    ratedRpm: unknownQuantity({
      title: 'Rated speed',
      unit: 'rpm',
      min: 0,
      aboveMin: true,
      max: 100000,
    }),
    ratedPowerW: unknownQuantity({
      title: 'Rated power',
      unit: 'W',
      min: 0,
      aboveMin: true,
      max: 50000,
      help: 'At the shaft, continuous.',
    }),
    heatResistanceKPerW: unknownQuantity({
      title: 'Thermal resistance',
      unit: 'K/W',
      min: 0,
      aboveMin: true,
      max: 100,
      help: 'Winding to air. Not known: from the rated point, which is taken to heat the winding by 80 K.',
    }),
    heatTimeS: unknownQuantity({
      title: 'Thermal time constant',
      unit: 's',
      min: 1,
      max: 20000,
      help: 'Not known: from the mass, or 20 minutes.',
    }),
    maximumTemperatureC: unknownQuantity({
      title: 'Highest winding temperature',
      unit: '°C',
      min: 40,
      max: 300,
      help: 'Not known: 120 °C, insulation class E with a margin.',
    }),
    maximumCurrentA: unknownQuantity({
      title: 'Highest current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 5000,
      help: 'What magnets and brushes stand for a moment.',
    }),
    massKg: unknownQuantity({ title: 'Mass', unit: 'kg', min: 0, aboveMin: true, max: 200 }),
    partId: z.string().max(64).nullable().meta({ title: 'Taken from part' }),
  })
  .meta({ title: 'Motor' });
export type Motor = z.infer<typeof motorSchema>;
