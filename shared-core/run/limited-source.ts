import { CurrentLimit } from './current-limit.ts';
import type { LoadSource } from './load-source.ts';

/** A source behind a controller that lets no more than `limitA` [A] flow from the pack. */
export function limitedSource(source: LoadSource, limitA: number): LoadSource {
  const limit = new CurrentLimit(limitA);
  return {
    ...source,
    terms(timeS, busVoltageV, into) {
      source.terms(timeS, busVoltageV, into);
      limit.hold(into, busVoltageV);
    },
    longestStepS: (timeS) => Math.min(limit.longestStepS(), source.longestStepS(timeS)),
    limitedA: () => limit.heldToA(),
  };
}
