import { chargeOption, startAfterRun } from '../charge/charge-option.ts';
import type { ChargeResult } from '../charge/charge-result.ts';
import { uncertainInputs } from '../compare/inputs/uncertain-inputs.ts';
import type { UncertainInput } from '../compare/inputs/input.ts';
import { scenarioOf } from '../compare/scenario.ts';
import { defaultSpreadWishes } from '../compare/spread/spread-wishes.ts';
import { spreadPlan } from '../compare/spread/spread-plan.ts';
import type { OptionSpread, PlanSpread } from '../compare/spread/spread.ts';
import type { Finding } from '../findings/finding.ts';
import { spreadFindings } from '../findings/spread-findings.ts';
import { mergeFindings } from '../findings/merge-findings.ts';
import { weekFindings } from '../findings/week-findings.ts';
import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Wiring } from '../plan/schema/wiring.ts';
import { studyOption } from '../study/study-option.ts';
import { studyPlan } from '../study/study-plan.ts';
import type { OptionStudy, PlanStudy } from '../study/study.ts';
import { prefillWiring, studyWiring, type WiringStudy } from '../wiring/index.ts';
import type { WeekStudy } from '../week/index.ts';
import { weekStudyOf } from '../week/week-study-of.ts';
import { spreadCases } from './spread-cases.ts';

export interface OutingFacts {
  readonly outing: Outing;
  readonly study: OptionStudy;
  readonly spread: OptionSpread | null;
  readonly caseCount: number | null;
}

/** Everything the parts of a sheet draw on, worked out once. */
export interface SheetFacts {
  readonly plan: Plan;
  readonly option: Option;
  readonly headline: OutingFacts;
  readonly outings: readonly OutingFacts[];
  readonly wiring: Wiring;
  /** The plan has no wiring; this one is the program's proposal. */
  readonly wiringProposed: boolean;
  readonly wiringStudy: WiringStudy;
  readonly charge: ChargeResult | null;
  readonly week: WeekStudy;
  /** Of this option and of the machine. */
  readonly findings: readonly Finding[];
  readonly inputs: readonly UncertainInput[];
}

export interface FactWishes {
  readonly language: Language;
  /** False leaves the spreads out, where the first page is wanted at once. */
  readonly spread?: boolean;
  /** Cases of each spread; chosen by the work of the run when left out. */
  readonly caseCount?: number;
  /** Spread of one outing that is known already, as on screen; it is not worked out again. */
  readonly known?: PlanSpread | null;
  /** How the plan is studied; whoever has its study already hands it out instead of running every option again. */
  readonly study?: (plan: Plan, outingId: string, language: Language) => PlanStudy;
}

/** Works out an option for the sheet, by the same functions as the screen and the command line. */
export function gatherSheetFacts(plan: Plan, option: Option, wishes: FactWishes): SheetFacts {
  const facts = factsWithoutCases(plan, option, wishes);
  return wishes.spread === false ? facts : addSheetSpreads(facts, wishes);
}

/** The same facts with the spreads that are still missing, which are hundreds of runs each. */
export function addSheetSpreads(facts: SheetFacts, wishes: FactWishes): SheetFacts {
  const { plan, option } = facts;
  const outings = facts.outings.map((entry): OutingFacts => {
    const { outing, study } = entry;
    if (entry.spread !== null || study.run.problem !== null) return entry;
    const spread = spreadPlan(
      { ...plan, options: [option] },
      {
        ...defaultSpreadWishes,
        outingId: outing.id,
        caseCount: wishes.caseCount ?? spreadCases(study.run),
      },
    );
    return withSpread(entry, option, spread);
  });
  const headline = outings[facts.outings.indexOf(facts.headline)]!;
  const isNew = facts.headline.spread === null;
  return {
    ...facts,
    outings,
    headline,
    findings: isNew
      ? mergeFindings(facts.findings, findingsOfSpread(plan, option, headline, wishes.language))
      : facts.findings,
  };
}

function factsWithoutCases(plan: Plan, option: Option, wishes: FactWishes): SheetFacts {
  const { language, known = null, study: studyWhole = studyPlan } = wishes;
  const whole = studyWhole(plan, plan.headlineOuting, language);
  const outings = plan.outings.map((outing): OutingFacts => {
    const studied =
      outing.id === whole.outingId ? whole.options.find(({ id }) => id === option.id) : undefined;
    const study = studied ?? studyOption(plan, option, outing, language);
    const entry = { outing, study, spread: null, caseCount: null };
    return study.run.problem === null && known?.outingId === outing.id
      ? withSpread(entry, option, known)
      : entry;
  });
  const headline = outings.find(({ outing }) => outing.id === whole.outingId) ?? outings[0]!;
  const { run } = headline.study;
  const { ambientC } = headline.outing;
  const wiring = plan.wiring ?? prefillWiring(plan, option, run, ambientC);
  const alone = { ...plan, options: [option] };
  const findings = mergeFindings(whole.findings, [
    ...weekFindings(alone, language, whole.outingId),
    ...findingsOfSpread(plan, option, headline, language),
  ]).filter(({ optionId }) => optionId === null || optionId === option.id);
  return {
    plan,
    option,
    headline,
    outings,
    wiring,
    wiringProposed: plan.wiring === null,
    wiringStudy: studyWiring(plan, wiring, option, run, ambientC),
    charge:
      option.charger === null
        ? null
        : chargeOption(option, option.charger, {
            temperatureC: ambientC,
            startPercent: startAfterRun(run),
            wishes: { afterHours: 2 },
          }),
    week: weekStudyOf(plan, option),
    findings,
    inputs: uncertainInputs(plan, scenarioOf(plan, option, headline.outing)),
  };
}

function withSpread(entry: OutingFacts, option: Option, spread: PlanSpread): OutingFacts {
  const own = spread.options.find(({ id }) => id === option.id);
  return own === undefined ? entry : { ...entry, spread: own, caseCount: spread.caseCount };
}

function findingsOfSpread(
  plan: Plan,
  option: Option,
  { outing, study, spread }: OutingFacts,
  language: Language,
): readonly Finding[] {
  if (spread === null) return [];
  const alone = { ...plan, options: [option] };
  return spreadFindings(alone, [study], { outingId: outing.id, options: [spread] }, language);
}
