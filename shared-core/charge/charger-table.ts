import type { Language } from '../plan/language.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { chargerParts } from '../library/index.ts';
import { matchCharger, type MatchConditions } from './match-charger.ts';
import type { ChargerMatch } from './match-result.ts';

/** own: the option's charger. other-option: a charger the plan has already. own-part, library: offered. */
export type ChargerOrigin = 'own' | 'other-option' | 'own-part' | 'library';

export interface ChargerCandidate {
  readonly id: string;
  readonly origin: ChargerOrigin;
  readonly charger: Charger;
  /** Option it belongs to now, for `other-option`. */
  readonly fromOption: string | null;
  readonly match: ChargerMatch;
}

const order = { fits: 0, limits: 1, unknown: 2, misfits: 3 } as const;

/**
 * Every charger of plan and library against one option, best first: the chargers that are there already lead, since
 * keeping the old one is the first question.
 */
export function chargerTable(
  plan: Plan,
  option: Option,
  conditions: Omit<MatchConditions, 'thresholds' | 'language'>,
  language: Language = 'en',
): ChargerCandidate[] {
  const seen = new Set<string>();
  const candidates: ChargerCandidate[] = [];
  const add = (
    id: string,
    origin: ChargerOrigin,
    charger: Charger,
    fromOption: string | null,
  ): void => {
    const key = JSON.stringify({ ...charger, name: '', partId: null, price: null });
    if (seen.has(key)) return;
    seen.add(key);
    const match = matchCharger(option, charger, {
      ...conditions,
      thresholds: plan.thresholds,
      language,
    });
    candidates.push({ id, origin, charger, fromOption, match });
  };
  if (option.charger !== null) add(`own-${option.id}`, 'own', option.charger, null);
  for (const other of plan.options) {
    if (other.id !== option.id && other.charger !== null)
      add(`option-${other.id}`, 'other-option', other.charger, other.name);
  }
  for (const { id, part } of plan.ownParts.chargers) add(`part-${id}`, 'own-part', part, null);
  for (const { id, value } of chargerParts) add(id, 'library', value, null);
  const there = (candidate: ChargerCandidate) => (candidate.origin === 'library' ? 1 : 0);
  return candidates.toSorted(
    (a, b) =>
      there(a) - there(b) ||
      order[a.match.verdict] - order[b.match.verdict] ||
      (a.match.hoursToFull ?? Infinity) - (b.match.hoursToFull ?? Infinity),
  );
}
