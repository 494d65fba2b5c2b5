import { chemistryTraits } from '../battery/chemistry.ts';
import { amount } from '../findings/amount.ts';
import type { Language } from '../plan/language.ts';
import type { Chemistry } from '../plan/schema/block.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { ChargeThresholds } from '../plan/schema/charge-thresholds.ts';
import type { Pack } from '../plan/schema/option.ts';
import { packGroups } from './charge-wishes.ts';
import type { MatchAspect } from './match-result.ts';

/** Names of the chemistries as sentences use them. */
export const chemistryNames: Readonly<Record<Chemistry, string>> = {
  agm: 'AGM',
  gel: 'Gel',
  flooded: 'flooded lead',
  lfp: 'LFP',
  nmc: 'NMC',
};

export function matchChemistry(pack: Pack, charger: Charger, language: Language): MatchAspect {
  const { chemistry } = pack.block;
  const names = charger.chemistries.map((name) => chemistryNames[name]).join(', ');
  const own = chemistryNames[chemistry];
  if (charger.chemistries.includes(chemistry)) {
    return {
      aspect: 'chemistry',
      verdict: 'fits',
      reason: { en: `The label names ${own}.`, de: `Das Schild nennt ${own}.` }[language],
      findingId: null,
    };
  }
  const bothLead = isLead(chemistry) && charger.chemistries.some((name) => isLead(name));
  return {
    aspect: 'chemistry',
    verdict: bothLead ? 'limits' : 'misfits',
    reason: {
      en: `Made for ${names}; the pack is ${own}.`,
      de: `Gebaut für ${names}; der Akku ist ${own}.`,
    }[language],
    findingId: bothLead ? 'CHG-2' : 'CHG-1',
  };
}

export function matchCellCount(pack: Pack, charger: Charger, language: Language): MatchAspect {
  const groups = packGroups(pack);
  const fits = charger.cellGroups === groups;
  return {
    aspect: 'cell-count',
    verdict: fits ? 'fits' : 'misfits',
    reason: fits
      ? {
          en: `${groups} cells in series, as the pack.`,
          de: `${groups} Zellen in Reihe wie der Akku.`,
        }[language]
      : {
          en: `Made for ${charger.cellGroups} cells in series; the pack has ${groups}.`,
          de: `Gebaut für ${charger.cellGroups} Zellen in Reihe; der Akku hat ${groups}.`,
        }[language],
    findingId: fits ? null : 'CHG-1',
  };
}

/** Lithium must not be charged below 0 °C; a flat lead block can freeze below about -10 °C. */
export function matchTemperature(
  pack: Pack,
  ambientC: number,
  remainingPercent: number,
  thresholds: ChargeThresholds,
  language: Language,
): MatchAspect {
  const at = amount(ambientC, '°C', language);
  const left = amount(remainingPercent, '%', language, 2);
  if (!isLead(pack.block.chemistry)) {
    const { lithiumColdC } = thresholds;
    const limit = amount(lithiumColdC, '°C', language);
    const cold = ambientC < lithiumColdC;
    return {
      aspect: 'temperature',
      verdict: cold ? 'misfits' : 'fits',
      reason: cold
        ? {
            en: `Lithium must not be charged at ${at}; ${limit} is the limit.`,
            de: `Lithium darf bei ${at} nicht geladen werden; die Grenze ist ${limit}.`,
          }[language]
        : {
            en: `${at} is above the ${limit} limit of lithium.`,
            de: `${at} liegt über der Grenze von ${limit} für Lithium.`,
          }[language],
      findingId: cold ? 'CHG-4' : null,
    };
  }
  const frozen =
    ambientC < thresholds.leadFreezesC && remainingPercent < thresholds.leadFlatPercent;
  return {
    aspect: 'temperature',
    verdict: frozen ? 'misfits' : 'fits',
    reason: frozen
      ? {
          en: `With ${left} charge left at ${at} the acid can freeze; a frozen block must not be charged.`,
          de: `Mit ${left} Restladung bei ${at} kann die Säure gefrieren; ein gefrorener Block darf nicht geladen werden.`,
        }[language]
      : { en: `${at} is no hindrance for lead.`, de: `${at} hindert Blei nicht.` }[language],
    findingId: frozen ? 'CHG-4' : null,
  };
}

/** Equalising pulses gas sealed blocks dry and drive a BMS to open. */
export function matchPulses(pack: Pack, charger: Charger, language: Language): MatchAspect {
  const { chemistry } = pack.block;
  if (!charger.equalises || chemistry === 'flooded') {
    return {
      aspect: 'pulses',
      verdict: 'fits',
      reason: charger.equalises
        ? {
            en: 'Equalising suits flooded lead.',
            de: 'Ausgleichsladung passt zu nasser Bleibatterie.',
          }[language]
        : { en: 'No equalising pulses.', de: 'Keine Ausgleichspulse.' }[language],
      findingId: null,
    };
  }
  const own = chemistryNames[chemistry];
  return {
    aspect: 'pulses',
    verdict: isLead(chemistry) ? 'limits' : 'misfits',
    reason: {
      en: `Sends equalising pulses, which ${own} does not stand.`,
      de: `Sendet Ausgleichspulse, die ${own} nicht verträgt.`,
    }[language],
    findingId: 'CHG-2',
  };
}

function isLead(chemistry: Chemistry): boolean {
  return chemistryTraits[chemistry].family === 'lead';
}
