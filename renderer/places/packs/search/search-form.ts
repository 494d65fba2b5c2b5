import { chargersFor, usualWishes, type ChargerChoice } from '#core/compare/search/usual-wishes.ts';
import type { SearchWishes } from '#core/compare/search/candidate.ts';
import type { Chemistry } from '#core/plan/schema/block.ts';
import type { Plan } from '#core/plan/schema/plan.ts';

/** What the user fills in before a search. */
export interface SearchForm {
  readonly leastVoltageV: number;
  readonly mostVoltageV: number;
  readonly goalMin: number;
  readonly massLimitKg: number | null;
  readonly priceLimit: number | null;
  readonly lengthMm: number | null;
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly mostParallel: number;
  readonly chemistries: readonly Chemistry[];
  readonly charger: ChargerChoice;
}

/** The form as the plan itself would fill it in. */
export function formOf(plan: Plan): SearchForm {
  const wishes = usualWishes(plan);
  const { lengthMm, widthMm, heightMm } = plan.machine.bay;
  return {
    leastVoltageV: Number(wishes.leastVoltageV.toFixed(1)),
    mostVoltageV: Number(wishes.mostVoltageV.toFixed(1)),
    goalMin: wishes.goalMin,
    massLimitKg: wishes.massLimitKg,
    priceLimit: null,
    lengthMm,
    widthMm,
    heightMm,
    mostParallel: wishes.mostParallel,
    chemistries: wishes.chemistries,
    charger: 'any',
  };
}

export const isSearchable = (form: SearchForm): boolean =>
  form.leastVoltageV <= form.mostVoltageV && form.chemistries.length > 0;

export function wishesOf(plan: Plan, form: SearchForm): SearchWishes {
  const { lengthMm, widthMm, heightMm, charger, ...figures } = form;
  return {
    ...usualWishes(plan),
    ...figures,
    chargers: chargersFor(plan, charger),
    bay:
      lengthMm === null || widthMm === null || heightMm === null
        ? null
        : [lengthMm, widthMm, heightMm],
  };
}
