import type { Converter } from '../plan/schema/accessory.ts';

/** What hangs on one supply: `I(V) = currentA + powerW / V + conductanceS V`. */
export interface Demand {
  readonly currentA: number;
  readonly powerW: number;
  readonly conductanceS: number;
}

export const noDemand: Demand = { currentA: 0, powerW: 0, conductanceS: 0 };

/** Coefficients of `P_loss = P0 + k I + R I^2`. */
export interface ConverterLoss {
  readonly idleLossW: number;
  readonly dropV: number;
  readonly lossResistanceOhm: number;
}

export interface ConverterPoint {
  readonly state: 'regulating' | 'dropout' | 'off';
  readonly inputPowerW: number;
  readonly outputPowerW: number;
  readonly outputVoltageV: number;
  readonly outputCurrentA: number;
}

/**
 * Loss coefficients of a converter. From a sheet with efficiency at rated load and idle current, the loss beyond idle is
 * split evenly between the term in I and the term in I^2 at rated current (derived; the split hardly moves run time).
 *
 * Form `P_loss = P0 + k I + R I^2` as used for converters by Rampinelli and by Notton (2010).
 */
export function converterLoss(converter: Converter): ConverterLoss {
  if (converter.loss.kind === 'coefficients') return converter.loss;
  const { efficiencyPercent, idleCurrentA } = converter.loss;
  const ratedW = converter.outputVoltageV * converter.ratedCurrentA;
  const nominalInputV = 2 * converter.outputVoltageV;
  const lossW = ratedW * (100 / efficiencyPercent - 1);
  const idleLossW = Math.min(lossW, idleCurrentA * nominalInputV);
  const rest = (lossW - idleLossW) / 2;
  return {
    idleLossW,
    dropV: rest / converter.ratedCurrentA,
    lossResistanceOhm: rest / converter.ratedCurrentA ** 2,
  };
}

/** Current a demand draws at a supply voltage [A]. */
export function demandCurrentA(demand: Demand, voltageV: number): number {
  if (voltageV <= 0) return 0;
  return demand.currentA + demand.powerW / voltageV + demand.conductanceS * voltageV;
}

/**
 * Operating point of a step-down converter.
 *
 * Regulating while `Vout <= Dmax Vin - I Rdrop`; below that (dropout) the output follows the input. Off below its lowest
 * input voltage.
 *
 * @param inputV voltage at the converter's input [V]
 */
export function converterPoint(
  converter: Converter,
  loss: ConverterLoss,
  demand: Demand,
  inputV: number,
): ConverterPoint {
  if (inputV <= 0 || inputV < (converter.minimumInputV ?? 0)) {
    return { state: 'off', inputPowerW: 0, outputPowerW: 0, outputVoltageV: 0, outputCurrentA: 0 };
  }
  let outputVoltageV = converter.outputVoltageV;
  let outputCurrentA = demandCurrentA(demand, outputVoltageV);
  const ceilingV = (currentA: number) =>
    (converter.maximumDutyPercent / 100) * inputV - currentA * converter.dropoutResistanceOhm;
  let state: 'regulating' | 'dropout' = 'regulating';
  if (ceilingV(outputCurrentA) < outputVoltageV) {
    state = 'dropout';
    // The sagging output changes the current; two rounds settle it because the dropout resistance is small.
    for (let round = 0; round < 2; round += 1) {
      outputVoltageV = Math.max(0, ceilingV(outputCurrentA));
      outputCurrentA = demandCurrentA(demand, outputVoltageV);
    }
  }
  const outputPowerW = outputVoltageV * outputCurrentA;
  const inputPowerW =
    outputPowerW +
    loss.idleLossW +
    loss.dropV * outputCurrentA +
    loss.lossResistanceOhm * outputCurrentA ** 2;
  return { state, inputPowerW, outputPowerW, outputVoltageV, outputCurrentA };
}
