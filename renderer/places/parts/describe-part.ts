import { nominalCellV } from './nominal-cell.ts';
import type { Language } from '#core/plan/language.ts';
import type { Accessory, Converter } from '#core/plan/schema/accessory.ts';
import type { Block } from '#core/plan/schema/block.ts';
import type { Charger } from '#core/plan/schema/charger.ts';
import type { Motor } from '#core/plan/schema/motor.ts';
import type { Load } from '#core/plan/schema/load.ts';
import { formatFigure } from '../../text/format.ts';

const joined = (parts: readonly (string | null)[]): string =>
  parts.filter((part) => part !== null).join(' · ');
const of = (value: number | null, unit: string, language: Language): string | null =>
  value === null ? null : `${formatFigure(value, language)} ${unit}`;

export const describeBlock = (block: Block, language: Language): string =>
  joined([
    of(block.cellGroups * nominalCellV(block.chemistry), 'V', language),
    of(block.capacityAh, 'A·h', language),
    of(block.massKg, 'kg', language),
    of(block.resistanceOhm === null ? null : 1000 * block.resistanceOhm, 'mΩ', language),
  ]);

export const describeCharger = (charger: Charger, language: Language): string =>
  joined([
    of(charger.endVoltageV, 'V', language),
    of(charger.currentA, 'A', language),
    charger.chemistries.join(', ').toUpperCase(),
    `${charger.cellGroups}S`,
  ]);

export const describeConverter = (converter: Converter, language: Language): string =>
  joined([
    of(converter.outputVoltageV, 'V', language),
    of(converter.ratedCurrentA, 'A', language),
    converter.minimumInputV === null || converter.maximumInputV === null
      ? null
      : `${formatFigure(converter.minimumInputV, language)}–${formatFigure(converter.maximumInputV, language)} V`,
  ]);

export function describeLoad(load: Load, language: Language): string {
  switch (load.kind) {
    case 'current':
      return `${formatFigure(load.currentA, language)} A`;
    case 'power':
      return `${formatFigure(load.powerW, language)} W`;
    case 'resistance':
      return `${formatFigure(load.resistanceOhm, language)} Ω`;
  }
}

export const describeAccessory = (accessory: Accessory, language: Language): string =>
  joined([
    describeLoad(accessory.load, language),
    accessory.dutyPercent < 100 ? `${accessory.dutyPercent} %` : null,
  ]);

export const describeMotor = (motor: Motor, language: Language): string =>
  joined([
    of(motor.ratedVoltageV, 'V', language),
    of(motor.ratedPowerW, 'W', language),
    of(motor.noLoadRpm, 'rpm', language),
    of(motor.windingOhm === null ? null : 1000 * motor.windingOhm, 'mΩ', language),
  ]);
