import type { Language } from '#core/plan/language.ts';
import type { PlanProblem } from '#core/plan/problem.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { OptionStudy, PlanStudy } from '#core/study/study.ts';

export interface StudyRequest {
  readonly ticket: number;
  readonly plan: Plan;
  readonly outingId: string;
  readonly language: Language;
}

/** Study of an option under a number; null where the page has got it under that number before. */
export interface SentOption {
  readonly number: number;
  readonly study: OptionStudy | null;
}

export type StudyAnswer =
  | {
      readonly kind: 'study';
      readonly ticket: number;
      readonly study: Omit<PlanStudy, 'options'>;
      readonly options: readonly SentOption[];
    }
  | NoStudy;

/** The same with whole studies, as the page takes it. */
export type StudyResult =
  | { readonly kind: 'study'; readonly ticket: number; readonly study: PlanStudy }
  | NoStudy;

type NoStudy =
  /** The plan contradicts itself; nothing was computed. */
  | {
      readonly kind: 'problems';
      readonly ticket: number;
      readonly problems: readonly PlanProblem[];
    }
  | { readonly kind: 'failed'; readonly ticket: number; readonly message: string };
