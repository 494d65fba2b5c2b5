import { z } from 'zod';
import { quantity } from './field.ts';

/** Limits of the findings about chargers and charging. */
export const chargeThresholdsSchema = z
  .object({
    leadLowPerAh: quantity({
      title: 'Lead: charge current, warn below',
      unit: 'A/(A·h)',
      min: 0,
      max: 1,
    }),
    leadHighPerAh: quantity({
      title: 'Lead: charge current, warn above',
      unit: 'A/(A·h)',
      min: 0.05,
      max: 2,
      help: 'Where the block states no highest charge current. Makers state 0.2 to 0.3.',
    }),
    lithiumHighPerAh: quantity({
      title: 'Lithium: charge current, warn above',
      unit: 'A/(A·h)',
      min: 0.05,
      max: 5,
      help: 'Where the block states no highest charge current.',
    }),
    lithiumColdC: quantity({
      title: 'Lithium: no charge below',
      unit: '°C',
      min: -30,
      max: 15,
      help: 'Makers state 0 °C, some 5 °C; lower only for cells made for it.',
    }),
    leadFreezesC: quantity({
      title: 'Lead: may freeze below',
      unit: '°C',
      min: -60,
      max: 0,
      help: 'When flat; a full block stands far colder.',
    }),
    leadFlatPercent: quantity({
      title: 'Lead: flat below, for freezing',
      unit: '%',
      min: 5,
      max: 90,
    }),
    leadFullDays: quantity({
      title: 'Lead: full charge at least every',
      unit: 'days',
      min: 1,
      max: 60,
    }),
  })
  .meta({ title: 'Limits of the charging findings' });
export type ChargeThresholds = z.infer<typeof chargeThresholdsSchema>;

/** 0.1 to 0.3 A per A·h of lead and 0 °C for lithium: makers' sheets. The rest: common practice, no source. */
export const defaultChargeThresholds: ChargeThresholds = {
  leadLowPerAh: 0.1,
  leadHighPerAh: 0.3,
  lithiumHighPerAh: 0.5,
  lithiumColdC: 0,
  leadFreezesC: -10,
  leadFlatPercent: 40,
  leadFullDays: 7.5,
};
