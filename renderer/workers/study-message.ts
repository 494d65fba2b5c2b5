import type { Language } from '#core/plan/language.ts';
import type { PlanProblem } from '#core/plan/problem.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { PlanStudy } from '#core/study/study.ts';

export interface StudyRequest {
  readonly ticket: number;
  readonly plan: Plan;
  readonly outingId: string;
  readonly language: Language;
}

export type StudyAnswer =
  | { readonly kind: 'study'; readonly ticket: number; readonly study: PlanStudy }
  /** The plan contradicts itself; nothing was computed. */
  | {
      readonly kind: 'problems';
      readonly ticket: number;
      readonly problems: readonly PlanProblem[];
    }
  | { readonly kind: 'failed'; readonly ticket: number; readonly message: string };
