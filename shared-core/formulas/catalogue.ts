import { peukertTimeFormula } from './rate/peukert-time.ts';
import { peukertExponentFormula } from './rate/peukert-exponent.ts';
import { peukertFitFormula } from './rate/peukert-fit.ts';
import { twoWellStateFormula } from './rate/two-well-state.ts';
import { twoWellLifetimeFormula } from './rate/two-well-lifetime.ts';
import { twoWellLargestCurrentFormula } from './rate/two-well-largest-current.ts';
import { twoWellPulsedLifetimeFormula } from './rate/two-well-pulsed-lifetime.ts';
import { twoWellFitFormula } from './rate/two-well-fit.ts';
import { chargeFromRestVoltageFormula } from './voltage/charge-from-rest-voltage.ts';
import { filteredCurrentVoltageFormula } from './voltage/filtered-current-voltage.ts';
import { leadResistanceRangeFormula } from './voltage/lead-resistance-range.ts';
import { loadedVoltageFormula } from './voltage/loaded-voltage.ts';
import { nmcHalfCellsFormula } from './voltage/nmc-half-cells.ts';
import { openCircuitVoltageFormula } from './voltage/open-circuit-voltage.ts';
import { shepherdVoltageFormula } from './voltage/shepherd-voltage.ts';
import { chargeVoltageTemperatureFormula } from './temperature/charge-voltage-temperature.ts';
import { cycleLifeFormula } from './temperature/cycle-life.ts';
import { leadCapacityTemperatureFormula } from './temperature/lead-capacity-temperature.ts';
import { lifeTemperatureFormula } from './temperature/life-temperature.ts';
import { nmcCapacityTemperatureFormula } from './temperature/nmc-capacity-temperature.ts';
import { roundTripEfficiencyFormula } from './temperature/round-trip-efficiency.ts';
import { selfDischargeFormula } from './temperature/self-discharge.ts';
import { constantPowerVoltageFormula } from './pack/constant-power-voltage.ts';
import { joiningSurgeFormula } from './pack/joining-surge.ts';
import { packTotalsFormula } from './pack/pack-totals.ts';
import { shortCircuitCurrentFormula } from './pack/short-circuit-current.ts';
import { controllerCurrentFormula } from './drive/controller-current.ts';
import { motorConstantFormula } from './drive/motor-constant.ts';
import { motorLimitsFormula } from './drive/motor-limits.ts';
import { motorPointFormula } from './drive/motor-point.ts';
import { resistorBrakingFormula, resistorCreepFormula } from './drive/resistor-braking.ts';
import { resistorOverloadFormula } from './drive/resistor-overload.ts';
import { roadForceFormula } from './drive/road-force.ts';
import { rollingCoefficientFormula } from './drive/rolling-coefficients.ts';
import { thermalRiseFormula } from './drive/thermal-rise.ts';
import { twoMotorsFormula } from './drive/two-motors.ts';
import { wheelSpeedFormula } from './drive/wheel-speed.ts';
import { converterDropoutFormula } from './accessories/converter-dropout.ts';
import { converterLossFormula } from './accessories/converter-loss.ts';
import { standbyDaysFormula } from './accessories/standby-days.ts';
import { chargeHoursFormula } from './charge/charge-hours.ts';
import { chargeVoltageTwinsFormula } from './charge/charge-voltage-twins.ts';
import { chargeWindowFormula } from './charge/charge-windows.ts';
import { linearChargeFormula } from './charge/linear-charge.ts';
import { ventilationFormula } from './charge/ventilation.ts';
import { ampacityFormula, ampacityByAreaFormula } from './wiring/ampacity.ts';
import { bladeFuseTimeFormula } from './wiring/blade-fuse-time.ts';
import { conductorResistanceFormula } from './wiring/conductor-resistance.ts';
import { withstandFactorFormula, faultWithstandFormula } from './wiring/fault-withstand.ts';
import { flexibleConductorFormula } from './wiring/flexible-conductors.ts';
import { fuseContinuousFormula } from './wiring/fuse-continuous.ts';
import { fusingCurrentFormula } from './wiring/fusing-current.ts';
import { prechargeFormula } from './wiring/precharge.ts';
import { strandedGaugeFormula } from './wiring/stranded-gauges.ts';
import { voltageDropFormula } from './wiring/voltage-drop.ts';
import { wireGaugeSizeFormula } from './wiring/wire-gauge-size.ts';
import type { Formula, FormulaArguments, FormulaResult } from './formula.ts';
import { fail } from './read-input.ts';

/** Subjects of the catalogue, in the order in which they are listed. */
export const formulaSubjects = [
  'rate',
  'voltage',
  'temperature',
  'pack',
  'drive',
  'accessories',
  'charge',
  'wiring',
] as const;
export type FormulaSubject = (typeof formulaSubjects)[number];

/** Every formula by subject. Ids are stable: files, tests, screens and the command line name them. */
export const formulasBySubject: Readonly<Record<FormulaSubject, readonly Formula[]>> = {
  rate: [
    peukertTimeFormula,
    peukertExponentFormula,
    peukertFitFormula,
    twoWellStateFormula,
    twoWellLifetimeFormula,
    twoWellLargestCurrentFormula,
    twoWellPulsedLifetimeFormula,
    twoWellFitFormula,
  ],
  voltage: [
    chargeFromRestVoltageFormula,
    filteredCurrentVoltageFormula,
    leadResistanceRangeFormula,
    loadedVoltageFormula,
    nmcHalfCellsFormula,
    openCircuitVoltageFormula,
    shepherdVoltageFormula,
  ],
  temperature: [
    chargeVoltageTemperatureFormula,
    cycleLifeFormula,
    leadCapacityTemperatureFormula,
    lifeTemperatureFormula,
    nmcCapacityTemperatureFormula,
    roundTripEfficiencyFormula,
    selfDischargeFormula,
  ],
  pack: [
    constantPowerVoltageFormula,
    joiningSurgeFormula,
    packTotalsFormula,
    shortCircuitCurrentFormula,
  ],
  drive: [
    controllerCurrentFormula,
    motorConstantFormula,
    motorLimitsFormula,
    motorPointFormula,
    resistorBrakingFormula,
    resistorCreepFormula,
    resistorOverloadFormula,
    roadForceFormula,
    rollingCoefficientFormula,
    thermalRiseFormula,
    twoMotorsFormula,
    wheelSpeedFormula,
  ],
  accessories: [converterDropoutFormula, converterLossFormula, standbyDaysFormula],
  charge: [
    chargeHoursFormula,
    chargeVoltageTwinsFormula,
    chargeWindowFormula,
    linearChargeFormula,
    ventilationFormula,
  ],
  wiring: [
    ampacityFormula,
    ampacityByAreaFormula,
    bladeFuseTimeFormula,
    conductorResistanceFormula,
    withstandFactorFormula,
    faultWithstandFormula,
    flexibleConductorFormula,
    fuseContinuousFormula,
    fusingCurrentFormula,
    prechargeFormula,
    strandedGaugeFormula,
    voltageDropFormula,
    wireGaugeSizeFormula,
  ],
};

/** Every formula, in the order of the subjects. */
export const formulas: readonly Formula[] = formulaSubjects.flatMap(
  (subject) => formulasBySubject[subject],
);

const byId = new Map(formulas.map((formula) => [formula.id, formula]));

/** The formula of that id. */
export function formulaOf(id: string): Formula | undefined {
  return byId.get(id);
}

/** Evaluates a formula by id; an unknown id is a failure that names close ones. */
export function evaluateFormula(id: string, inputs: FormulaArguments): FormulaResult {
  const formula = formulaOf(id);
  if (formula !== undefined) return formula.evaluate(inputs);
  const words = id.split('-');
  const close = formulas
    .filter((each) => words.some((part) => part.length > 2 && each.id.includes(part)))
    .map((each) => each.id);
  return fail(
    'formula',
    `“${id}” is not in the catalogue`,
    close.length > 0
      ? `Close ones: ${close.join(', ')}.`
      : 'List the catalogue to see every formula.',
  );
}
