import type { Cure } from './cure.ts';
import type { Finding } from './finding.ts';

/** What one option has to do with a joined finding. */
export interface FindingShare {
  /** Null for the machine. */
  readonly optionId: string | null;
  readonly finding: Finding;
}

/** A cure, and the options it mends; a cure for one option of several may not be enough for the others. */
export interface SharedCure extends Cure {
  readonly optionIds: readonly (string | null)[];
}

/** One finding for all the options that have it in common. */
export interface JoinedFinding {
  /** The first of them; its words stand for all where `sameWords`. */
  readonly finding: Finding;
  readonly shares: readonly FindingShare[];
  /** False where the options differ in their figures. */
  readonly sameWords: boolean;
  /** Fields of all of them, each once. */
  readonly fields: readonly string[];
  /** Cures of all of them, each once, with the options it was worked out for. */
  readonly cures: readonly SharedCure[];
}

/**
 * Findings that say the same of several options made one, in the order of their first. Two are the same when they are of
 * one rule, severity and question, concern the same thing (fields alike but for the option) and differ in figures only.
 */
export function joinFindings(findings: readonly Finding[]): JoinedFinding[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = sameness(finding);
    const group = groups.get(key) ?? [];
    // Two of one option are two matters, however alike their words.
    const own = group.some(({ optionId }) => optionId === finding.optionId);
    groups.set(own ? `${key}#${groups.size}` : key, own ? [finding] : [...group, finding]);
  }
  return [...groups.values()].map((group) => {
    const [first] = group as [Finding, ...Finding[]];
    return {
      finding: first,
      shares: group.map((finding) => ({ optionId: finding.optionId, finding })),
      sameWords: group.every(({ what, remedy }) => what === first.what && remedy === first.remedy),
      fields: [...new Set(group.flatMap(({ fields }) => fields))],
      cures: distinct(group),
    };
  });
}

function sameness({ id, status, severity, what, consequence, fields }: Finding): string {
  const field = fields.map((path) => path.replace(/^options\.\d+\./, 'options.*.')).join();
  return JSON.stringify([
    id,
    status,
    severity,
    what.replaceAll(/[\d.,]+/g, '#'),
    consequence,
    field,
  ]);
}

function distinct(group: readonly Finding[]): SharedCure[] {
  const known = new Map<string, SharedCure>();
  for (const { optionId, cures } of group) {
    for (const cure of cures) {
      const key = JSON.stringify(cure);
      known.set(key, { ...cure, optionIds: [...(known.get(key)?.optionIds ?? []), optionId] });
    }
  }
  return [...known.values()];
}
