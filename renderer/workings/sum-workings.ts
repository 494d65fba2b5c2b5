import { packMassKg, packPrice } from '#core/pack/pack-mass.ts';
import { displaySymbol, toDisplay, type UnitSystem } from '#core/units/display.ts';
import type { Language } from '#core/plan/language.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { formatFigure, thinSpace } from '../text/format.ts';
import { workingTexts } from '../text/workings.ts';
import type { Working } from '../controls/working.ts';

const count = ({ pack }: Option): number => pack.seriesCount * pack.parallelCount;

export function massWorking(
  option: Option,
  index: number,
  language: Language,
  units: UnitSystem,
): Working {
  const text = workingTexts[language];
  const mass = (value: number | null): string =>
    value === null
      ? text.notKnown
      : `${formatFigure(toDisplay(value, 'kg', units), language)}${thinSpace}${displaySymbol('kg', units)}`;
  return {
    formula: ['m = n · m(block)'],
    inputs: [
      {
        label: text.blocks,
        value: String(count(option)),
        field: `options.${index}.pack.seriesCount`,
      },
      {
        label: text.blockMass,
        value: mass(option.pack.block.massKg),
        field: `options.${index}.pack.block.massKg`,
      },
    ],
    result: { label: text.mass, value: mass(packMassKg(option.pack)) },
    source: text.sumSource,
  };
}

export function priceWorking(
  option: Option,
  index: number,
  language: Language,
  currency: string,
): Working {
  const text = workingTexts[language];
  const price = (value: number | null): string =>
    value === null ? text.notKnown : `${formatFigure(value, language, 4)}${thinSpace}${currency}`;
  const pack = packPrice(option.pack);
  return {
    formula: ['p = n · p(block) + p(charger)'],
    inputs: [
      {
        label: text.blocks,
        value: String(count(option)),
        field: `options.${index}.pack.seriesCount`,
      },
      {
        label: text.blockPrice,
        value: price(option.pack.block.price),
        field: `options.${index}.pack.block.price`,
      },
      {
        label: text.charger,
        value: price(option.charger?.price ?? null),
        field: `options.${index}.charger.price`,
      },
    ],
    result: {
      label: text.price,
      value: price(pack === null ? null : pack + (option.charger?.price ?? 0)),
    },
    source: text.sumSource,
  };
}
