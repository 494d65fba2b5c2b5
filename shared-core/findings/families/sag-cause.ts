import type { Words } from '../../plan/language.ts';
import type { RunResult } from '../../run/result.ts';

/** The element of the loop that costs most volts: what it is, what to do, and the field it stands in. */
export interface SagCause {
  readonly is: Words;
  readonly remedy: Words;
  readonly field:
    | 'differences'
    | 'block.resistanceOhm'
    | 'block.capacityAh'
    | 'linkResistanceOhm'
    | 'harness';
}

/** Blocks this far apart in charge at the end [%]: the emptiest is what stops the run. Common practice, no source. */
const apartPercent = 8;

/** Names what made the voltage fall below the cutoff while charge was left, from the energy ledger of the run. */
export function sagCause({ blocks, ledger }: Pick<RunResult, 'blocks' | 'ledger'>): SagCause {
  const left = blocks.map((block) => block.remainingPercent);
  const least = Math.min(...left);
  if (Math.max(...left) - least > apartPercent) {
    const weak = blocks.find((block) => block.remainingPercent === least)!;
    const string = weak.strings[0] ?? 1;
    const position = weak.positions[0] ?? 1;
    return {
      is: {
        en: `a weak block (string ${string}, block ${position})`,
        de: `ein schwacher Block (Strang ${string}, Block ${position})`,
      },
      remedy: {
        en: 'Measure that block alone, at rest and under load; if it stays behind, replace the whole string at once.',
        de: 'Diesen Block allein messen, in Ruhe und unter Last; bleibt er zurück, den ganzen Strang auf einmal ersetzen.',
      },
      field: 'differences',
    };
  }
  const costs: readonly (readonly [wh: number, cause: SagCause])[] = [
    [ledger.resistanceLossWh, resistance],
    [ledger.rateLossWh + ledger.polarisationLossWh, rate],
    [ledger.linkLossWh, links],
    [ledger.harnessLossWh, harness],
  ];
  return costs.toSorted((a, b) => b[0] - a[0])[0]![1];
}

const resistance: SagCause = {
  is: { en: 'the resistance of the blocks', de: 'der Widerstand der Blöcke' },
  remedy: {
    en: 'Take blocks with less resistance (larger ones, a second string, lithium), keep the pack warm, or lower the battery current limit.',
    de: 'Blöcke mit weniger Widerstand nehmen (größere, einen zweiten Strang, Lithium), den Akku warm halten oder die Strombegrenzung senken.',
  },
  field: 'block.resistanceOhm',
};

const rate: SagCause = {
  is: {
    en: 'the rate at which the blocks give their charge',
    de: 'die Geschwindigkeit, mit der die Blöcke ihre Ladung hergeben',
  },
  remedy: {
    en: 'Take more ampere-hours or a second string, so that each block gives less at a time; go slower, or split the outing: a rest brings part of it back.',
    de: 'Mehr Amperestunden oder einen zweiten Strang nehmen, damit jeder Block weniger auf einmal gibt; langsamer fahren oder die Ausfahrt teilen: Eine Pause bringt einen Teil zurück.',
  },
  field: 'block.capacityAh',
};

const links: SagCause = {
  is: { en: 'links, lugs and string leads', de: 'Verbinder, Kabelschuhe und Strangleitungen' },
  remedy: {
    en: 'Measure the millivolts across each joint under load; clean and tighten lugs, take thicker links.',
    de: 'Die Millivolt über jeder Verbindung unter Last messen; Kabelschuhe reinigen und festziehen, dickere Verbinder nehmen.',
  },
  field: 'linkResistanceOhm',
};

const harness: SagCause = {
  is: { en: 'the cable to the controller', de: 'das Kabel zur Steuerung' },
  remedy: {
    en: 'Measure the drop between pack and controller under load; take a thicker or shorter cable, or better plugs.',
    de: 'Den Spannungsfall zwischen Akku und Steuerung unter Last messen; ein dickeres oder kürzeres Kabel oder bessere Stecker nehmen.',
  },
  field: 'harness',
};
