import type { Language, Words } from '../plan/language.ts';
import { amount } from './amount.ts';
import type { Cure, CureStatement } from './cure.ts';
import type { FindingContext, OptionContext } from './context.ts';
import type { Finding, FindingId, Severity, SourceClass } from './finding.ts';

/** One rule: what it is called, how bad it can get, where it comes from, and how it is checked. */
export interface Rule {
  readonly id: FindingId;
  /** The most severe it gets. */
  readonly severity: Severity;
  readonly sourceClass: SourceClass;
  /** Where the rule comes from, in English; shown with every finding. */
  readonly source: string;
  /** What it looks for, one line; for the list of rules. */
  readonly about: Words;
  check(context: FindingContext): readonly Finding[];
}

/** What a check says of one finding; the frame of the rule adds the rest. */
export interface Statement {
  /** Option concerned; absent for the machine. */
  readonly optionId?: string;
  /** Where it is not the rule's own severity. */
  readonly severity?: Severity;
  readonly what: Words;
  readonly consequence: Words;
  readonly remedy: Words;
  readonly facts?: readonly (readonly [label: Words, value: number, unit: string])[];
  readonly fields: readonly string[];
  /** Where there is a clear one. */
  readonly cures?: readonly CureStatement[];
}

/** A question instead of a finding: what is missing. */
export interface Question {
  readonly optionId?: string;
  readonly missing: Words;
  /** What to do; absent: enter the figure. */
  readonly remedy?: Words;
  readonly fields: readonly string[];
  readonly cures?: readonly CureStatement[];
}

/** What a check works with: the language's own number writing, and the two ways to answer. */
export interface RuleVoice {
  readonly language: Language;
  /** A number in the language of the reader. */
  say(value: number, unit: string, digits?: number): string;
  finding(statement: Statement): Finding;
  notChecked(question: Question): Finding;
}

type Frame = Omit<Rule, 'check'>;

/** A rule that looks at the whole plan at once. */
export function planRule(
  frame: Frame,
  check: (context: FindingContext, voice: RuleVoice) => readonly Finding[],
): Rule {
  return { ...frame, check: (context) => check(context, voiceOf(frame, context.language)) };
}

/** A rule that looks at each option for itself. */
export function optionRule(
  frame: Frame,
  check: (entry: OptionContext, voice: RuleVoice, context: FindingContext) => readonly Finding[],
): Rule {
  return planRule(frame, (context, voice) =>
    context.options.flatMap((entry) => check(entry, voice, context)),
  );
}

const enterFigure: Words = {
  en: 'Enter the figure; until then nothing is said about this.',
  de: 'Den Wert eintragen; bis dahin ist dazu nichts gesagt.',
};

function voiceOf(frame: Frame, language: Language): RuleVoice {
  const { id, severity, sourceClass, source } = frame;
  return {
    language,
    say: (value, unit, digits) => amount(value, unit, language, digits),
    finding: (statement) => ({
      id,
      status: 'finding',
      severity: statement.severity ?? severity,
      optionId: statement.optionId ?? null,
      what: statement.what[language],
      consequence: statement.consequence[language],
      remedy: statement.remedy[language],
      facts: (statement.facts ?? []).map(([label, value, unit]) => ({
        label: label[language],
        value,
        unit,
      })),
      sourceClass,
      source,
      fields: statement.fields,
      cures: curesIn(language, statement.cures),
    }),
    notChecked: (question) => ({
      id,
      status: 'not-checked',
      severity,
      optionId: question.optionId ?? null,
      what: {
        en: `Not checked: ${question.missing.en}`,
        de: `Nicht geprüft: ${question.missing.de}`,
      }[language],
      consequence: frame.about[language],
      remedy: (question.remedy ?? enterFigure)[language],
      facts: [],
      sourceClass,
      source,
      fields: question.fields,
      cures: curesIn(language, question.cures),
    }),
  };
}

function curesIn(language: Language, cures: readonly CureStatement[] = []): Cure[] {
  return cures.map(({ does, changes }) => ({ does: does[language], changes }));
}
