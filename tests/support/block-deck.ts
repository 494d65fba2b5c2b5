import type { BlockModel } from '#core/battery/block-model.ts';
import { testCurve } from './engine.ts';

/**
 * The block as a circuit for ngspice, written from the equations and not from the engine: charge and lag as capacitor
 * voltages driven by the current, the rest curve as a piecewise linear source, resistance with knee as a source in series.
 *
 * @param name letters and digits, unique in the deck
 * @param plus @param minus nodes; discharge current leaves at `plus`
 * @param model its open-circuit curve must be `testCurve`
 */
export function blockDeck(
  name: string,
  plus: string,
  minus: string,
  model: BlockModel,
  startCharge = 1,
): string {
  const chargeF = model.capacityAh * 3600;
  const lagF = (chargeF * model.availableShare) / (1 - model.availableShare);
  const lagOhm = 1 / (model.levellingPerS * lagF);
  const head = `(V(sig${name})-V(lag${name}))`;
  const curve = testCurve.map(([x, y]) => `${x},${y}`).join(',');
  return [
    `* ${name}: current sensor, rest curve, resistance with knee, polarisation`,
    `Vi${name} n1${name} ${plus} 0`,
    `Bo${name} n3${name} ${minus} V=pwl(${head},-1,${testCurve[0][1] - 6 * 60},${curve},2,13.8)`,
    `Br${name} n3${name} n2${name} V=I(Vi${name})*(${model.resistanceOhm}+${model.kneeOhm}*(1/min(1,max(0.02,${head}))-1))`,
    `Rp${name} n2${name} n1${name} ${model.polarisationOhm}`,
    `Cp${name} n2${name} n1${name} ${model.polarisationS / model.polarisationOhm} ic=0`,
    `Cs${name} sig${name} 0 ${chargeF} ic=${startCharge}`,
    `Fs${name} sig${name} 0 Vi${name} 1`,
    `Rs${name} sig${name} 0 1e12`,
    `Cl${name} lag${name} 0 ${lagF} ic=0`,
    `Rl${name} lag${name} 0 ${lagOhm}`,
    `Fl${name} 0 lag${name} Vi${name} 1`,
  ].join('\n');
}
