import {
  accessoryParts,
  blockParts,
  chargerParts,
  converterParts,
  motorParts,
} from '#core/library/index.ts';
import type { Part } from '#core/library/part.ts';
import type { Accessory, Converter } from '#core/plan/schema/accessory.ts';
import type { Block } from '#core/plan/schema/block.ts';
import type { Motor } from '#core/plan/schema/motor.ts';
import type { Charger } from '#core/plan/schema/charger.ts';
import { useSettings } from '../../state/settings-store.ts';
import { nameIn, namedIn } from '../../text/names.ts';
import type { Language } from '#core/plan/language.ts';
import { usePlan } from '../../state/plan-store.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import type { PickablePart } from './PartPicker.tsx';

const fromLibrary = <T>(parts: readonly Part<T>[], language: Language): PickablePart<T>[] =>
  parts.map(({ id, group, name, value, sourceClass }) => ({
    id,
    group: nameIn(group, language),
    name: nameIn(name, language),
    value: namedIn(value, language),
    sourceClass,
  }));

const useWithOwn = <T extends { readonly name: string }>(
  library: readonly Part<T>[],
  own: readonly { readonly id: string; readonly part: T }[],
): readonly PickablePart<T>[] => {
  const group = useText(packsTexts).partOwn;
  const language = useSettings((state) => state.language);
  return [
    ...own.map(({ id, part }) => ({
      id: `own-${id}`,
      group,
      name: part.name,
      value: part,
      sourceClass: null,
    })),
    ...fromLibrary(library, language),
  ];
};

/** Own parts of the plan first, then the library. */
export const useBlockParts = (): readonly PickablePart<Block>[] =>
  useWithOwn(
    blockParts,
    usePlan((plan) => plan.ownParts.blocks),
  );
export const useChargerParts = (): readonly PickablePart<Charger>[] =>
  useWithOwn(
    chargerParts,
    usePlan((plan) => plan.ownParts.chargers),
  );
export const useConverterParts = (): readonly PickablePart<Converter>[] =>
  useWithOwn(
    converterParts,
    usePlan((plan) => plan.ownParts.converters),
  );
export const useAccessoryParts = (): readonly PickablePart<Accessory>[] =>
  useWithOwn(
    accessoryParts,
    usePlan((plan) => plan.ownParts.accessories),
  );

/** The plan keeps no motors of its own. */
const noMotors: readonly { readonly id: string; readonly part: Motor }[] = [];
export const useMotorParts = (): readonly PickablePart<Motor>[] => useWithOwn(motorParts, noMotors);
