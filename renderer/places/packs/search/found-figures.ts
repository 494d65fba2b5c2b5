import type { FoundPack } from '#core/compare/search/candidate.ts';
import type { Language } from '#core/plan/language.ts';
import { displaySymbol, toDisplay, type UnitSystem } from '#core/units/display.ts';
import { formatFigure, formatMinutes } from '../../../text/format.ts';
import type { SearchFigure } from '../../../text/search.ts';

export const searchFigures: readonly SearchFigure[] = [
  'runTimeMin',
  'massKg',
  'price',
  'chargeHours',
];

/** How figures of found packs are written. */
export interface FigureStyle {
  readonly language: Language;
  readonly units: UnitSystem;
  readonly currency: string;
}

export function figureUnit(figure: SearchFigure, { units, currency }: FigureStyle): string {
  switch (figure) {
    case 'runTimeMin':
      return 'min';
    case 'massKg':
      return displaySymbol('kg', units);
    case 'price':
      return currency;
    case 'chargeHours':
      return 'h';
  }
}

/** A figure in the unit it is shown in; null where it is not known. */
export function figureValue(
  pack: FoundPack,
  figure: SearchFigure,
  { units }: FigureStyle,
): number | null {
  const value = pack[figure];
  return value !== null && figure === 'massKg' ? toDisplay(value, 'kg', units) : value;
}

/** A figure as it stands in the table; a usual price carries a sign for about. */
export function figureWords(pack: FoundPack, figure: SearchFigure, style: FigureStyle): string {
  const value = figureValue(pack, figure, style);
  if (value === null) return '–';
  if (figure === 'runTimeMin') return formatMinutes(value, style.language);
  const rough = figure === 'price' && pack.isPriceTypical ? '≈ ' : '';
  return `${rough}${formatFigure(value, style.language, figure === 'chargeHours' ? 2 : 3)}`;
}
