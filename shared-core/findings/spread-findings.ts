import type { PlanSpread } from '../compare/spread/spread.ts';
import type { Language } from '../plan/language.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { OptionStudy } from '../study/study.ts';
import { shortLowEnd } from './families/run-time.ts';
import type { Finding } from './finding.ts';
import { planFindings } from './plan-findings.ts';

/** Findings that rest on the spread of the run times; it takes longer than the rest of the rules. */
export function spreadFindings(
  plan: Plan,
  studies: readonly OptionStudy[],
  spread: Pick<PlanSpread, 'outingId' | 'options'>,
  language: Language = 'en',
): Finding[] {
  const lowEnds = new Map(
    spread.options.map(({ id, low, goalPercent }) => [
      id,
      { lowMin: low.value, goalPercent: goalPercent ?? 100 },
    ]),
  );
  return planFindings(plan, studies, language, spread.outingId, [shortLowEnd(lowEnds)]);
}
