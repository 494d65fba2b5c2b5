import type { ChargeResult } from '#core/charge/charge-result.ts';
import type { Language } from '#core/plan/language.ts';
import type { Charger } from '#core/plan/schema/charger.ts';
import type { Working, WorkingValue } from '../controls/working.ts';
import { chargingTexts } from '../text/charging.ts';
import { figureWorkingTexts } from '../text/figure-workings.ts';
import { workingTexts } from '../text/workings.ts';
import { figureWriter } from './figure-writer.ts';

/** Figures of a charge that can be opened. */
export type ChargeFigure = 'done' | 'to80' | 'to98' | 'into' | 'mains' | 'cost' | 'highest';

interface Charged {
  readonly charge: ChargeResult;
  readonly charger: Charger;
  readonly optionIndex: number;
  readonly cost: number | null;
  readonly currency: string;
}

/** How a figure of the charge after the outing came about. */
export function chargeFigureWorking(
  figure: ChargeFigure,
  { charge, charger, optionIndex, cost, currency }: Charged,
  language: Language,
): Working {
  const text = figureWorkingTexts[language];
  const names = chargingTexts[language].curve;
  const write = figureWriter(language);
  const named = (label: string, value: string, field?: string): WorkingValue =>
    field === undefined ? { label, value } : { label, value, field };
  const ofCharger = `options.${optionIndex}.charger`;
  const start = named(text.start, write.as(charge.startPercent, '%'));
  const current = named(text.current, write.as(charger.currentA, 'A'), `${ofCharger}.currentA`);
  const volts = named(
    text.endVoltage,
    charger.endVoltageV === null
      ? workingTexts[language].notKnown
      : write.as(charger.endVoltageV, 'V'),
    `${ofCharger}.endVoltageV`,
  );
  const hours = (value: number | null): string =>
    value === null ? names.never : write.hours(value);
  const sum = (of: 'gassedAh' | 'bledAh'): number =>
    charge.units.reduce((total, unit) => total + unit.count * unit[of], 0);
  const shared = { source: text.ofCharge, validity: text.chargeValidity };
  switch (figure) {
    case 'done':
      return {
        ...shared,
        formula: [text.chargeTime],
        inputs: [
          start,
          current,
          volts,
          ...(charger.tailCurrentA === null
            ? []
            : [named(text.tail, write.as(charger.tailCurrentA, 'A'), `${ofCharger}.tailCurrentA`)]),
        ],
        steps: [
          named(text.bulk, write.hours(charge.bulkHours)),
          named(text.held, write.hours(charge.hours - charge.bulkHours)),
          named(text.end, write.as(charge.endPercent, '%')),
        ],
        exact: { value: 60 * charge.hours, unit: 'min' },
        result: named(names.done, hours(charge.hours)),
      };
    case 'to80':
      return {
        ...shared,
        formula: [text.chargeMark(80)],
        inputs: [start, current, volts],
        result: named(names.to80, hours(charge.hoursTo80)),
      };
    case 'to98':
      return {
        ...shared,
        formula: [text.chargeMark(98)],
        inputs: [start, current, volts],
        result: named(names.to98, hours(charge.hoursTo98)),
      };
    case 'into':
      return {
        ...shared,
        formula: [text.into],
        inputs: [start, named(text.end, write.as(charge.endPercent, '%'))],
        steps: [
          ...(charge.chargeEfficiencyPercent === null
            ? []
            : [named(text.stored, write.as(charge.chargeEfficiencyPercent, '%'))]),
          named(text.gassed, write.as(sum('gassedAh'), 'A·h')),
          named(text.bled, write.as(sum('bledAh'), 'A·h')),
        ],
        exact: { value: charge.inAh, unit: 'A·h' },
        result: named(names.intoPack, write.as(charge.inAh, 'A·h')),
      };
    case 'mains':
      return {
        ...shared,
        formula: [text.mains],
        inputs: [
          named(text.intoPack, write.as(charge.inWh, 'W·h')),
          named(
            text.chargerEfficiency,
            write.as(charge.mainsWh > 0 ? (100 * charge.inWh) / charge.mainsWh : 0, '%'),
            `${ofCharger}.efficiencyPercent`,
          ),
        ],
        exact: { value: charge.mainsWh, unit: 'W·h' },
        result: named(names.mains, write.as(charge.mainsWh, 'W·h')),
      };
    case 'cost':
      return {
        source: text.ofCharge,
        formula: [text.costFormula],
        inputs: [
          named(names.mains, write.as(charge.mainsWh, 'W·h')),
          named(
            text.price,
            write.as(charge.mainsWh > 0 ? (1000 * (cost ?? 0)) / charge.mainsWh : 0, currency),
            'week.tariff.pricePerKWh',
          ),
        ],
        exact: { value: cost ?? 0, unit: currency },
        result: named(names.cost, write.fixed(cost ?? 0, currency, 3)),
      };
    case 'highest':
      return {
        ...shared,
        formula: [text.highest],
        inputs: [volts],
        exact: { value: charge.highestPackV, unit: 'V' },
        result: named(names.highest, write.as(charge.highestPackV, 'V')),
      };
  }
}
