import { chemistryTraits } from '../battery/chemistry.ts';
import { amount } from '../findings/amount.ts';
import type { Language } from '../plan/language.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { Pack } from '../plan/schema/option.ts';
import type { Thresholds } from '../plan/schema/thresholds.ts';
import type { WantedVoltages } from './charge-wishes.ts';
import type { MatchAspect } from './match-result.ts';

/** Beyond this the charger is not the pack's at all, whatever its label says [%]. Common practice, no source. */
const hopelessPercent = 8;

/** Voltages of a charger at a temperature; a missing compensation counts as none. */
export function givenVoltages(
  charger: Charger,
  ambientC: number,
): { readonly endV: number | null; readonly floatV: number | null } {
  const shiftV =
    ((charger.compensationMvPerCellK ?? 0) / 1000) * charger.cellGroups * (ambientC - 25);
  const moved = (volts: number | null): number | null => (volts === null ? null : volts + shiftV);
  const endV = moved(charger.endVoltageV);
  // A constant-voltage charger never leaves its end voltage.
  const floatV = charger.kind === 'staged' ? moved(charger.floatVoltageV) : endV;
  return { endV, floatV };
}

/** Percent by which `value` lies outside the band; 0 inside, negative below. */
export function offPercent(value: number, lowV: number, highV: number): number {
  if (value < lowV) return (100 * (value - lowV)) / lowV;
  return value > highV ? (100 * (value - highV)) / highV : 0;
}

export function matchEndVoltage(
  pack: Pack,
  charger: Charger,
  wanted: WantedVoltages,
  ambientC: number,
  thresholds: Thresholds,
  language: Language,
): MatchAspect {
  const { endV } = givenVoltages(charger, ambientC);
  if (endV === null) {
    return {
      aspect: 'end-voltage',
      verdict: 'unknown',
      reason: {
        en: 'The end voltage of the charger is missing.',
        de: 'Die Ladeendspannung des Ladegeräts fehlt.',
      }[language],
      findingId: 'CHG-2',
    };
  }
  const off = offPercent(endV, wanted.endLowV, wanted.endHighV);
  const fits = Math.abs(off) <= thresholds.endVoltageTolerancePercent;
  const given = amount(endV, 'V', language);
  const asked = bandWords(wanted.endLowV, wanted.endHighV, language);
  const at = amount(ambientC, '°C', language);
  const by = amount(Math.abs(off), '%', language, 2);
  const lithium = chemistryTraits[pack.block.chemistry].family === 'lithium';
  const unfit = Math.abs(off) > hopelessPercent || (lithium && off > 0);
  const more = off > 0;
  return {
    aspect: 'end-voltage',
    verdict: fits ? 'fits' : unfit ? 'misfits' : 'limits',
    ...(fits ? {} : { side: more ? 'above' : 'below' }),
    reason: fits
      ? {
          en: `Ends at ${given}; wanted ${asked} at ${at}.`,
          de: `Endet bei ${given}; gewünscht ${asked} bei ${at}.`,
        }[language]
      : {
          en: `Ends at ${given}, ${by} ${more ? 'above' : 'below'} the wanted ${asked} at ${at}.`,
          de: `Endet bei ${given}, ${by} ${more ? 'über' : 'unter'} den gewünschten ${asked} bei ${at}.`,
        }[language],
    findingId: fits ? null : 'CHG-2',
  };
}

export function matchFloatVoltage(
  charger: Charger,
  wanted: WantedVoltages,
  ambientC: number,
  thresholds: Thresholds,
  language: Language,
): MatchAspect {
  const { floatV } = givenVoltages(charger, ambientC);
  const verdict = (of: MatchAspect['verdict'], reason: Record<Language, string>): MatchAspect => ({
    aspect: 'float-voltage',
    verdict: of,
    reason: reason[language],
    findingId: of === 'fits' ? null : 'CHG-2',
  });
  if (floatV === null) {
    return verdict('fits', {
      en: 'Stops after the charge; no float.',
      de: 'Hört nach der Ladung auf; kein Erhaltungsladen.',
    });
  }
  const given = amount(floatV, 'V', language);
  if (wanted.float === null) {
    return {
      ...verdict('limits', {
        en: `Holds ${given} after the charge; lithium must not be floated.`,
        de: `Hält nach der Ladung ${given}; Lithium darf nicht erhaltungsgeladen werden.`,
      }),
      side: 'above',
    };
  }
  const { lowV, highV } = wanted.float;
  const off = offPercent(floatV, lowV, highV);
  const asked = bandWords(lowV, highV, language);
  if (Math.abs(off) <= thresholds.endVoltageTolerancePercent) {
    return verdict('fits', {
      en: `Floats at ${given}; wanted ${asked}.`,
      de: `Erhält bei ${given}; gewünscht ${asked}.`,
    });
  }
  const by = amount(Math.abs(off), '%', language, 2);
  const more = off > 0;
  return {
    ...verdict('limits', {
      en: `Floats at ${given}, ${by} ${more ? 'above' : 'below'} the wanted ${asked}.`,
      de: `Erhält bei ${given}, ${by} ${more ? 'über' : 'unter'} den gewünschten ${asked}.`,
    }),
    side: more ? 'above' : 'below',
  };
}

function bandWords(lowV: number, highV: number, language: Language): string {
  const low = amount(lowV, 'V', language);
  const high = amount(highV, 'V', language);
  if (low === high) return low;
  return {
    en: `${amount(lowV, '', language)} to ${high}`,
    de: `${amount(lowV, '', language)} bis ${high}`,
  }[language];
}
