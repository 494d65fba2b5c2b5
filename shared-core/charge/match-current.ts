import { chemistryTraits } from '../battery/chemistry.ts';
import { amount } from '../findings/amount.ts';
import type { Language } from '../plan/language.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { ChargeThresholds } from '../plan/schema/charge-thresholds.ts';
import type { Pack } from '../plan/schema/option.ts';
import type { MatchAspect } from './match-result.ts';

/** What the pack takes [A]: its own limits where stated, else what is usual; `high` from whatever gives in first. */
export function chargeCurrentWindow(
  pack: Pack,
  { leadLowPerAh, leadHighPerAh, lithiumHighPerAh }: ChargeThresholds,
): { readonly lowA: number; readonly highA: number } {
  const { block, parallelCount } = pack;
  const usual =
    chemistryTraits[block.chemistry].family === 'lead'
      ? { low: leadLowPerAh, high: leadHighPerAh }
      : { low: 0, high: lithiumHighPerAh };
  const ownA = block.maximumChargeA ?? usual.high * block.capacityAh;
  const bmsA = block.bms?.continuousChargeA ?? Number.POSITIVE_INFINITY;
  return {
    lowA: usual.low * block.capacityAh * parallelCount,
    highA: Math.min(ownA, bmsA) * parallelCount,
  };
}

export function matchCurrent(
  pack: Pack,
  charger: Charger,
  thresholds: ChargeThresholds,
  language: Language,
): MatchAspect {
  const { lowA, highA } = chargeCurrentWindow(pack, thresholds);
  const given = amount(charger.currentA, 'A', language);
  const most = amount(highA, 'A', language);
  const least = amount(lowA, 'A', language);
  const bmsA = (pack.block.bms?.continuousChargeA ?? Infinity) * pack.parallelCount;
  if (charger.currentA > bmsA * 1.02) {
    return {
      aspect: 'current',
      verdict: 'misfits',
      side: 'above',
      reason: {
        en: `Gives ${given}; the BMS opens above ${amount(bmsA, 'A', language)}, and nothing is charged.`,
        de: `Gibt ${given}; das BMS öffnet über ${amount(bmsA, 'A', language)}, und nichts wird geladen.`,
      }[language],
      findingId: 'CHG-3',
    };
  }
  if (charger.currentA > highA) {
    return {
      aspect: 'current',
      verdict: 'limits',
      side: 'above',
      reason: {
        en: `Gives ${given}; the pack takes ${most} at most.`,
        de: `Gibt ${given}; der Akku nimmt höchstens ${most}.`,
      }[language],
      findingId: 'CHG-3',
    };
  }
  if (charger.currentA < lowA) {
    return {
      aspect: 'current',
      verdict: 'limits',
      side: 'below',
      reason: {
        en: `Gives ${given}; lead of this size wants at least ${least} to be stirred and filled in a night.`,
        de: `Gibt ${given}; Blei dieser Größe möchte mindestens ${least}, um über Nacht voll zu werden.`,
      }[language],
      findingId: 'CHG-3',
    };
  }
  return {
    aspect: 'current',
    verdict: 'fits',
    reason: {
      en: `Gives ${given}; the pack takes up to ${most}.`,
      de: `Gibt ${given}; der Akku nimmt bis zu ${most}.`,
    }[language],
    findingId: null,
  };
}

export function matchPort(
  portLimitA: number | null,
  charger: Charger,
  language: Language,
): MatchAspect {
  const given = amount(charger.currentA, 'A', language);
  if (portLimitA === null) {
    return {
      aspect: 'port',
      verdict: 'unknown',
      reason: {
        en: 'What port and lead carry is missing.',
        de: 'Was Ladebuchse und Leitung tragen, fehlt.',
      }[language],
      findingId: 'CHG-3',
    };
  }
  const limit = amount(portLimitA, 'A', language);
  const over = charger.currentA > portLimitA;
  return {
    aspect: 'port',
    verdict: over ? 'limits' : 'fits',
    ...(over ? { side: 'above' as const } : {}),
    reason: over
      ? {
          en: `${given} is more than the ${limit} of port and lead.`,
          de: `${given} sind mehr als die ${limit} von Buchse und Leitung.`,
        }[language]
      : { en: `Port and lead carry ${limit}.`, de: `Buchse und Leitung tragen ${limit}.` }[
          language
        ],
    findingId: over ? 'CHG-3' : null,
  };
}
