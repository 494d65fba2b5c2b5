import { demandCurrentA } from '../accessories/converter-input.ts';
import type { LoadTerms } from './load-source.ts';

/** A load near its limit is asked again after this long [s]: its current rises as the bus falls. */
const lookAgainS = 2;
/** Nearer than this to the limit counts as near it. */
const nearShare = 0.9;

/**
 * What a controller's battery current limit does to a load. Where the load asks for more, the current stays at the
 * limit and the machine gets less power than the leg says; both meet where the demand equals the limit, so nothing
 * jumps.
 */
export class CurrentLimit {
  private readonly limitA: number;
  private near = false;
  private limited = false;

  /** @param limitA most the controller lets flow from the pack [A], above 0; Infinity holds nothing back */
  constructor(limitA: number) {
    this.limitA = limitA;
  }

  /** Holds `terms`, asked at `busVoltageV` [V], to the limit. */
  hold(terms: LoadTerms, busVoltageV: number): void {
    const currentA = demandCurrentA(terms, busVoltageV);
    this.limited = currentA > this.limitA;
    // A steady current or a resistor asks for less as the bus falls: only power comes nearer.
    this.near = this.limited || (terms.powerW > 0 && currentA > nearShare * this.limitA);
    if (!this.limited) return;
    terms.currentA = this.limitA;
    terms.powerW = 0;
    terms.conductanceS = 0;
  }

  /** Nothing that this limit holds flows at present. */
  release(): void {
    this.near = false;
    this.limited = false;
  }

  /** Longest step [s] before the load must be held against the limit again. */
  longestStepS(): number {
    return this.near ? lookAgainS : Infinity;
  }

  /** Current the load is held back to at present [A]; null while it is not. */
  heldToA(): number | null {
    return this.limited ? this.limitA : null;
  }
}
