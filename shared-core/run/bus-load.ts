import { converterLoss, converterPoint, demandCurrentA } from '../accessories/converter-input.ts';
import type { ConverterLoss, ConverterPoint } from '../accessories/converter-input.ts';
import { isIdle } from '../accessories/demands.ts';
import type { LoadTerms } from './load-source.ts';
import type { RunSetup } from './setup.ts';

/** A converter that fell below its lowest input starts again this far above it. */
const converterRestart = 1.04;

/** All loads of the bus together: motor, controller idle, converter, accessories on the pack. */
export interface BusLoad {
  readonly motor: LoadTerms;
  readonly total: LoadTerms;
  converter: ConverterPoint;
  converterOff: boolean;
  /** The loads need not be asked again before this time [s], as long as the bus stays above `steadyAboveV`. */
  steadyUntilS: number;
  steadyAboveV: number;
  /** While false nothing draws: the machine is switched off and rests. */
  on: boolean;
}

const absent: ConverterPoint = {
  state: 'off',
  inputPowerW: 0,
  outputPowerW: 0,
  outputVoltageV: 0,
  outputCurrentA: 0,
};

function noTerms(): LoadTerms {
  return { currentA: 0, powerW: 0, conductanceS: 0 };
}

export function createBusLoad(): BusLoad {
  return {
    motor: noTerms(),
    total: noTerms(),
    converter: absent,
    converterOff: false,
    steadyUntilS: 0,
    steadyAboveV: 0,
    on: true,
  };
}

/** Prepares the function that works out the loads at a time and bus voltage, once per run. */
export function busLoadUpdater(
  setup: RunSetup,
): (load: BusLoad, timeS: number, busV: number) => void {
  const { source, converter, converterDemand, packDemand, controllerIdleA } = setup;
  // A converter without load still idles; without any accessory the user would switch it off.
  const working = converter !== null && !isIdle(converterDemand) ? converter : null;
  const loss: ConverterLoss | null = working === null ? null : converterLoss(working);
  const fixedPoint =
    working === null || loss === null ? null : converterPoint(working, loss, converterDemand, 1000);
  const lowestRegulatingV =
    working === null || fixedPoint === null
      ? 0
      : (working.outputVoltageV + fixedPoint.outputCurrentA * working.dropoutResistanceOhm) /
        (working.maximumDutyPercent / 100);

  const steadyAboveV =
    working === null ? 0 : Math.max(lowestRegulatingV, working.minimumInputV ?? 0);

  const converterAt = (load: BusLoad, busV: number): ConverterPoint => {
    if (working === null || loss === null || fixedPoint === null) return absent;
    const lowestV = working.minimumInputV ?? 0;
    if (load.converterOff) load.converterOff = busV < lowestV * converterRestart;
    else load.converterOff = busV < lowestV;
    if (load.converterOff) return absent;
    // In regulation the point does not depend on the input voltage: no need to work it out at each step.
    return busV >= lowestRegulatingV
      ? fixedPoint
      : converterPoint(working, loss, converterDemand, busV);
  };

  return (load, timeS, busV) => {
    const { motor, total } = load;
    if (!load.on) {
      motor.currentA = motor.powerW = motor.conductanceS = 0;
      total.currentA = total.powerW = total.conductanceS = 0;
      load.converter = absent;
      load.steadyUntilS = Number.POSITIVE_INFINITY;
      load.steadyAboveV = 0;
      return;
    }
    source.terms(timeS, busV, motor);
    load.converter = converterAt(load, busV);
    load.steadyUntilS = timeS + source.longestStepS(timeS);
    load.steadyAboveV = load.converterOff ? Number.POSITIVE_INFINITY : steadyAboveV;
    total.currentA = motor.currentA + controllerIdleA + packDemand.currentA;
    total.powerW = motor.powerW + packDemand.powerW + load.converter.inputPowerW;
    total.conductanceS = motor.conductanceS + packDemand.conductanceS;
  };
}

/** Current of the motor terms at a bus voltage [A]; negative while the motor feeds back. */
export function motorCurrentA(load: BusLoad, busV: number): number {
  return demandCurrentA(load.motor, busV);
}
