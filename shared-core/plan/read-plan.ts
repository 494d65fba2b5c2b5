import { planCaps, utf8Bytes } from './caps.ts';
import { crossChecks } from './cross-checks.ts';
import { fileProblem, type FileTrouble } from './file-problem.ts';
import { jsonFailure } from './json-failure.ts';
import { jsonPlace } from './json-place.ts';
import type { Language } from './language.ts';
import { migrate, oldestReadable, type Migration, type RawPlan } from './migrations/migration.ts';
import { migrations } from './migrations/table.ts';
import type { PlanProblem } from './problem.ts';
import { scanJson } from './scan-json.ts';
import { planFormat, planSchema, planVersion, type Plan } from './schema/plan.ts';
import { schemaProblem } from './schema-problem.ts';
import { unknownFields } from './unknown-fields.ts';

export type ReadPlanResult =
  | {
      readonly ok: true;
      readonly plan: Plan;
      /** Version of the file where it was older than the program's. */
      readonly migratedFrom?: number;
      /** Paths of fields the format does not know; they were left out. */
      readonly leftOut: readonly string[];
    }
  | {
      readonly ok: false;
      readonly problem: PlanProblem;
      /** Every problem found, the first of which is `problem`. */
      readonly problems: readonly PlanProblem[];
    };

/** What a reader may be told beyond the text. */
export interface ReadPlanOptions {
  readonly language?: Language;
  /** The table of migrations and the version it leads to; the program's own unless a test brings another. */
  readonly migrations?: readonly Migration[];
  readonly version?: number;
}

/**
 * Reads the text of a plan file. Every trouble a file can cause is a typed problem that names the field and the way to
 * mend it; nothing is thrown and nothing half-read is returned.
 */
export function readPlan(text: string, options: ReadPlanOptions = {}): ReadPlanResult {
  const {
    language = 'en',
    migrations: table = migrations,
    version: current = planVersion,
  } = options;
  const refuse = (trouble: FileTrouble): ReadPlanResult =>
    refusal([fileProblem(trouble, language)]);
  if (utf8Bytes(text, planCaps.bytes) > planCaps.bytes) return refuse({ kind: 'too-large' });
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (body.trim() === '') return refuse({ kind: 'empty' });
  const parsed = parseJson(body);
  if ('kind' in parsed) return refuse(parsed);
  const objection = scanJson(parsed.value);
  if (objection !== null) return refuse({ kind: 'scan', objection });
  if (!isRecord(parsed.value) || parsed.value['format'] !== planFormat)
    return refuse({ kind: 'not-a-plan' });
  const from = parsed.value['version'];
  if (typeof from !== 'number' || !Number.isInteger(from) || from < 0)
    return refuse({ kind: 'no-version' });
  if (from > current) return refuse({ kind: 'too-new', version: from });
  if (from < oldestReadable(table, current)) return refuse({ kind: 'too-old', version: from });
  const raw = from === current ? parsed.value : migrate(parsed.value, from, table, current);
  const checked = checkPlan({ ...raw, version: planVersion }, language);
  if (!checked.ok) return checked;
  return {
    ...checked,
    leftOut: unknownFields(raw, checked.plan),
    ...(from === current ? {} : { migratedFrom: from }),
  };
}

/** Checks a plan that is already a value: the schema first, then what holds between fields. */
export function checkPlan(value: unknown, language: Language = 'en'): ReadPlanResult {
  const result = planSchema.safeParse(value);
  if (!result.success) {
    return refusal(result.error.issues.map((issue) => schemaProblem(issue, value, language)));
  }
  const problems = crossChecks(result.data, language);
  if (problems.length > 0) return refusal(problems);
  return { ok: true, plan: result.data, leftOut: [] };
}

function refusal(problems: readonly PlanProblem[]): ReadPlanResult {
  return { ok: false, problem: problems[0]!, problems };
}

function isRecord(value: unknown): value is RawPlan {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The words JSON does not know but careless programs write. */
const notNumbers = /^-?(NaN|Infinity|nan|inf)\b/;

function parseJson(text: string): { readonly value: unknown } | FileTrouble {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    const position = jsonFailure(text);
    const place = jsonPlace(text, position);
    const rest = text.slice(position, position + 20);
    const word = notNumbers.exec(rest);
    if (word !== null) return { kind: 'not-a-number', place, found: word[0] };
    if (rest.trim() === '') return { kind: 'cut-short', place };
    return { kind: 'not-json', place, found: /^\S\w*/.exec(rest)?.[0] ?? '' };
  }
}
