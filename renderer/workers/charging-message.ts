import type { Language } from '#core/plan/language.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { AfterRun, ChargingStudy } from '#core/study/study-charging.ts';

export interface ChargingRequest {
  readonly ticket: number;
  readonly plan: Plan;
  readonly outingId: string;
  readonly after: readonly AfterRun[];
  readonly language: Language;
}

export type ChargingAnswer =
  | { readonly kind: 'charging'; readonly ticket: number; readonly study: ChargingStudy }
  | { readonly kind: 'failed'; readonly ticket: number; readonly message: string };
