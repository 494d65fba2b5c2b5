import { defineFormula, step } from '../define-formula.ts';
import { number, word } from '../input-spec.ts';

/** Gas-producing current [mA per A·h] by construction and stage. Source: IEC 62485-2, table of currents (published). */
export const gasCurrents = {
  vented: { float: 5, boost: 20 },
  vrla: { float: 1, boost: 8 },
} as const;

/**
 * Air flow that keeps hydrogen below its limit [m³/h]: `Q = 0.05 n I_gas C/1000`.
 *
 * Source: IEC 62485-2 (published).
 *
 * @param cells n, lead cells in all
 * @param gasMaPerAh I_gas [mA/A·h]
 * @param capacityAh C [A·h]
 */
export function ventilationM3PerH(cells: number, gasMaPerAh: number, capacityAh: number): number {
  return (0.05 * cells * gasMaPerAh * capacityAh) / 1000;
}

/** Free opening, in and out each, where air moves by itself [cm²]: `A = 28 Q`. Source: IEC 62485-2 (published). */
export function ventilationOpeningCm2(flowM3PerH: number): number {
  return 28 * flowM3PerH;
}

export const ventilationFormula = defineFormula({
  id: 'ventilation',
  title: 'Ventilation while lead blocks charge',
  equation: 'Q = 0.05 n I_gas C/1000; A = 28 Q',
  inputs: {
    construction: word(['vented', 'vrla'], 'vented: flooded; vrla: AGM or gel'),
    stage: word(['float', 'boost'], 'stage of the charge', 'boost'),
    cells: number('1', 1, 1000, 'lead cells in all; 6 in a 12 V block'),
    capacityAh: number('A·h', 0.01, 10_000, 'capacity of a cell'),
  },
  outputs: {
    flowM3PerH: ['m³/h', 'air flow'],
    openingCm2: ['cm²', 'free opening, in and out each'],
  },
  assumptions: 'Healthy cells, charger within its limits.',
  validity: 'Guide from stationary practice; never charge in sleeping rooms or sealed boxes.',
  source: { class: 'published', citation: 'IEC 62485-2, ventilation' },
  compute: ({ construction, stage, cells, capacityAh }) => {
    const gas = gasCurrents[construction][stage];
    const flowM3PerH = ventilationM3PerH(cells, gas, capacityAh);
    return {
      values: { flowM3PerH, openingCm2: ventilationOpeningCm2(flowM3PerH) },
      steps: [step('Gas current', gas, 'mA/A·h')],
    };
  },
});
