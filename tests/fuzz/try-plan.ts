import { checkPlan, readPlan } from '#core/plan/read-plan.ts';
import type { Language } from '#core/plan/language.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import {
  buildSheet,
  gatherSheetFacts,
  sheetHtml,
  sheetPartIds,
  sheetTables,
  sheetText,
  tableCsv,
} from '#core/sheet/index.ts';
import { studyCharging } from '#core/study/study-charging.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import type { PlanStudy } from '#core/study/study.ts';
import { weekStudyOf } from '#core/week/week-study-of.ts';
import {
  checkSwitches,
  commissioningSteps,
  coordinate,
  diagramOf,
  diagramSvg,
  prefillWiring,
  studyWiring,
  wiringRecord,
} from '#core/wiring/index.ts';
import { notFinite, withoutWordsOfNone } from './not-finite.ts';

export type Outcome =
  | { readonly kind: 'worked' }
  | { readonly kind: 'refused'; readonly problem: string };

const must = (value: unknown, what: string): void => {
  const found = notFinite(value);
  if (found !== null) throw new Error(`${what}${found}`);
};

/**
 * The sheet of one option as page, text and tables: the first, in English, or the last, in German. One of each option
 * would only repeat it; the spread has tests of its own.
 */
function workSheet(plan: Plan, study: PlanStudy, language: Language): void {
  const option = plan.options.at(language === 'en' ? 0 : -1)!;
  const units = language === 'en' ? 'metric' : 'us';
  const facts = gatherSheetFacts(plan, option, { language, spread: false, study: () => study });
  const sheet = buildSheet(facts, { language, units, date: '2026-02-03', version: '9.8.7' });
  must(sheet, 'sheet');
  must(sheetHtml(sheet, sheetPartIds, 'a4'), 'sheet page');
  must(sheetText(sheet, sheetPartIds), 'sheet text');
  for (const table of sheetTables(sheet, sheetPartIds)) must(tableCsv(table), 'sheet table');
}

/** Everything the program computes of a plan; throws when a number is not finite or anything else goes wrong. */
export function workPlan(plan: Plan): void {
  const again = readPlan(writePlan(plan));
  if (!again.ok) throw new Error(`written and not read again: ${again.problem.path}`);
  const language = plan.options.length % 2 === 0 ? 'en' : 'de';
  const study = studyPlan(plan, plan.headlineOuting, language);
  must(study, 'study');
  const runs = study.options.map(({ run }) => run);
  must(studyCharging(plan, study.outingId, runs), 'charging');
  const outing = plan.outings.find(({ id }) => id === study.outingId) ?? plan.outings[0]!;
  for (const [index, option] of plan.options.entries()) {
    must(weekStudyOf(plan, option), 'week');
    const run = runs[index]!;
    const wiring = plan.wiring ?? prefillWiring(plan, option, run, outing.ambientC);
    const wires = studyWiring(plan, wiring, option, run, outing.ambientC);
    must(wiringRecord(wires), 'wiring');
    must(checkSwitches(wires, wiring.branches), 'switches');
    must(commissioningSteps(plan, wiring, option, wires, 'en'), 'commissioning');
    for (const branch of wiring.branches)
      must(coordinate(wires, branch, wiring.startSeconds, 'en'), 'coordination');
    must(diagramSvg(diagramOf(wires, 'cruising', 'en'), plan.name), 'diagram');
  }
  workSheet(plan, study, language);
}

/** A value that may be a plan: worked through, or refused with a problem that says where and how to mend it. */
export function tryPlan(value: unknown): Outcome {
  return judge(checkPlan(value));
}

/** A text that may be a plan file. A name in it may read NaN, which is then no fault of the program. */
export function tryPlanText(text: string): Outcome {
  const read = readPlan(text);
  return judge(read.ok ? readPlan(withoutWordsOfNone(writePlan(read.plan))) : read);
}

function judge(read: ReturnType<typeof readPlan>): Outcome {
  if (read.ok) {
    workPlan(read.plan);
    return { kind: 'worked' };
  }
  const { problem, remedy } = read.problem;
  if (problem === '' || remedy === '') throw new Error('a problem without words');
  return { kind: 'refused', problem };
}
