import type { PlanSpread } from '#core/compare/spread/spread.ts';
import type { Language } from '#core/plan/language.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { Sheet } from '#core/sheet/index.ts';
import type { UnitSystem } from '#core/units/display.ts';

export interface SheetRequest {
  readonly ticket: number;
  readonly plan: Plan;
  readonly optionId: string;
  readonly language: Language;
  readonly units: UnitSystem;
  readonly date: string;
  readonly version: string;
  /** Spread of the headline outing as on screen; null while it is being worked out. */
  readonly known: PlanSpread | null;
}

export type SheetAnswer =
  | {
      readonly kind: 'sheet';
      readonly ticket: number;
      readonly sheet: Sheet;
      /** Routine as iCalendar text; null where there is none to write. */
      readonly calendar: string | null;
      /** False while the spreads are still being worked out. */
      readonly isWhole: boolean;
    }
  | { readonly kind: 'failed'; readonly ticket: number; readonly message: string };
