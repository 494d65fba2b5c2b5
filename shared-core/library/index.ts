import type { Accessory, Converter } from '../plan/schema/accessory.ts';
import type { Block } from '../plan/schema/block.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { Motor } from '../plan/schema/motor.ts';
import { accessoryParts } from './accessories.ts';
import { chargerParts } from './chargers.ts';
import { converterParts } from './converters.ts';
import { leadBlocks } from './lead-blocks.ts';
import { lithiumBlocks } from './lithium-blocks.ts';
import { motorParts } from './motors.ts';
import type { Part } from './part.ts';

export type { FigureClass, FigureRange, Part } from './part.ts';
export { accessoryParts, chargerParts, converterParts, motorParts };

/** Every block of the library: lead, lithium packs, cell groups. */
export const blockParts: readonly Part<Block>[] = [...leadBlocks, ...lithiumBlocks];

/** A copy of a library block, free to be edited. An unknown identifier is a bug of the caller and throws. */
export function libraryBlock(id: string): Block {
  return copyOf(find(blockParts, id));
}

export function libraryCharger(id: string): Charger {
  return copyOf(find(chargerParts, id));
}

export function libraryConverter(id: string): Converter {
  return copyOf(find(converterParts, id));
}

export function libraryAccessory(id: string): Accessory {
  return copyOf(find(accessoryParts, id));
}

export function libraryMotor(id: string): Motor {
  return copyOf(find(motorParts, id));
}

function find<T>(parts: readonly Part<T>[], id: string): T {
  const part = parts.find((entry) => entry.id === id);
  if (part === undefined) throw new Error(`No library part ${id}`);
  return part.value;
}

/** Parts are plain data, so that a copy by way of JSON is exact. */
function copyOf<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}
