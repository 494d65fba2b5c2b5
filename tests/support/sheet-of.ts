import type { Language } from '#core/plan/language.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { buildSheet, gatherSheetFacts, type Sheet } from '#core/sheet/index.ts';

interface SheetChoices {
  readonly optionId?: string;
  readonly language?: Language;
  readonly units?: 'metric' | 'us';
  /** Cases of the spread; none unless asked for, since most tests do not look at it. */
  readonly caseCount?: number;
}

/** The sheet of a plan as tests want it: one day, one version. */
export function sheetOf(plan: Plan, choices: SheetChoices = {}): Sheet {
  const { optionId, language = 'en', units = 'metric', caseCount } = choices;
  const option = plan.options.find(({ id }) => id === optionId) ?? plan.options[0]!;
  const facts = gatherSheetFacts(plan, option, {
    language,
    spread: caseCount !== undefined,
    ...(caseCount === undefined ? {} : { caseCount }),
  });
  return buildSheet(facts, { language, units, date: '2026-02-03', version: '9.8.7' });
}
