import { demandCurrentA } from '../accessories/converter-input.ts';
import type { LoadSource } from './load-source.ts';

/** A load near its limit is asked again after this long [s]: its current rises as the bus falls. */
const lookAgainS = 2;
/** Nearer than this to the limit counts as near it. */
const nearShare = 0.9;

/**
 * A source behind a controller that lets no more than `limitA` flow from the pack. Where the load asks for more, the
 * current stays at the limit and the machine gets less power than the leg says; both meet where the demand equals the
 * limit, so nothing jumps.
 */
export function limitedSource(source: LoadSource, limitA: number): LoadSource {
  let near = false;
  let limited = false;
  return {
    ...source,
    terms(timeS, busVoltageV, into) {
      source.terms(timeS, busVoltageV, into);
      const currentA = demandCurrentA(into, busVoltageV);
      limited = currentA > limitA;
      // A steady current or a resistor asks for less as the bus falls: only power comes nearer.
      near = limited || (into.powerW > 0 && currentA > nearShare * limitA);
      if (!limited) return;
      into.currentA = limitA;
      into.powerW = 0;
      into.conductanceS = 0;
    },
    longestStepS: (timeS) =>
      near ? Math.min(lookAgainS, source.longestStepS(timeS)) : source.longestStepS(timeS),
    limitedA: () => (limited ? limitA : null),
  };
}
