import { newConverter } from '../plan/defaults.ts';
import type { Converter } from '../plan/schema/accessory.ts';
import type { Part } from './part.ts';

/** Input class, output [V], rated current [A], input range [V], efficiency at rated load [%], idle current [A]. */
type ConverterRow = readonly [
  input: string,
  outputV: number,
  ratedA: number,
  minimumV: number,
  maximumV: number,
  efficiencyPercent: number,
  idleA: number,
];

/** Efficiency 85 to 95 %, idle 5 to 30 mA: common practice, no source. Input ranges: from memory of usual labels. */
const rows: readonly ConverterRow[] = [
  ['24', 12, 3, 15, 32, 88, 0.012],
  ['24', 12, 5, 15, 35, 90, 0.012],
  ['24', 12, 10, 15, 40, 92, 0.015],
  ['24', 12, 20, 15, 40, 93, 0.025],
  ['36-48', 12, 5, 20, 60, 88, 0.015],
  ['36-48', 12, 10, 30, 72, 90, 0.015],
  ['36-48', 12, 20, 30, 72, 91, 0.025],
  ['24', 5, 3, 8, 32, 86, 0.008],
  ['24', 5, 5, 8, 35, 88, 0.01],
  ['36-48', 5, 3, 15, 60, 85, 0.012],
  ['36-48', 24, 10, 30, 72, 92, 0.02],
];

/** Step-down converters of the library. */
export const converterParts: readonly Part<Converter>[] = rows.map(
  ([input, outputV, ratedA, minimumV, maximumV, efficiencyPercent, idleA]) => {
    const id = `converter-${input}-to-${outputV}-${ratedA}a`;
    const name = `Step-down ${input} V to ${outputV} V, ${ratedA} A`;
    return {
      id,
      group: `${input} V to ${outputV} V`,
      name,
      value: {
        ...newConverter(),
        name,
        outputVoltageV: outputV,
        ratedCurrentA: ratedA,
        peakCurrentA: 1.5 * ratedA,
        minimumInputV: minimumV,
        maximumInputV: maximumV,
        loss: { kind: 'sheet', efficiencyPercent, idleCurrentA: idleA },
        partId: id,
      },
      figures: [
        {
          field: 'loss.efficiencyPercent',
          unit: '%',
          low: 85,
          typical: efficiencyPercent,
          high: 95,
          sourceClass: 'common-practice',
          source: 'Step-down converters at rated load 85 to 95 %. Common practice, no source.',
        },
        {
          field: 'loss.idleCurrentA',
          unit: 'A',
          low: 0.005,
          typical: idleA,
          high: 0.03,
          sourceClass: 'common-practice',
          source: 'Idle input current 5 to 30 mA. Common practice, no source.',
        },
      ],
      sourceClass: 'from-memory',
    };
  },
);
