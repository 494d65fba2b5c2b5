import type { SeasonFigure } from '../workings/season-working.ts';
import type { Texts } from './use-text.ts';

interface SeasonWorkingTexts {
  readonly formulas: Readonly<Record<SeasonFigure, string>>;
  readonly weeks: string;
  readonly outings: string;
  readonly start: string;
  readonly deepest: string;
  readonly fullCharges: string;
  readonly chargingHours: string;
  readonly source: string;
  readonly wearSource: string;
  readonly validity: string;
}

export const seasonWorkingTexts: Texts<SeasonWorkingTexts> = {
  en: {
    formulas: {
      lost: 'outings that ended before their time, counted over the season',
      lowest: 'lowest charge of the season, after any outing',
      depth: 'mean over the outings of the charge they took from full',
      cycles: 'Σ charge taken / capacity, of the pack that did most',
      seasons:
        'seasons until a fifth of the capacity is gone: cycle wear at these depths and the passing of time',
      full: 'longest time between two full charges while in use',
      unattended: 'hours in which it charged and no one was awake and near',
      energy: 'E(mains) = Σ charges ∫ V · I dt / η(charger)',
      cost: 'Σ price at the hour · energy from the mains',
    },
    weeks: 'Weeks of the season',
    outings: 'Outings',
    start: 'Least charge wanted',
    deepest: 'Deepest outing',
    fullCharges: 'Full charges',
    chargingHours: 'Hours on the charger',
    source: 'Read off the simulated season (derived): every outing and every charge, day by day.',
    wearSource:
      'Cycle life of the chemistry over depth and temperature (common practice), added up over the season (derived).',
    validity:
      'the chances of the outings are drawn with the seed under Place, season, tariff: another seed moves the counts a little.',
  },
  de: {
    formulas: {
      lost: 'Fahrten, die vor ihrer Zeit endeten, über die Saison gezählt',
      lowest: 'niedrigste Ladung der Saison nach irgendeiner Fahrt',
      depth: 'Mittel über die Fahrten dessen, was sie von der vollen Ladung nahmen',
      cycles: 'Σ entnommene Ladung / Kapazität, des Akkus, der am meisten leistete',
      seasons:
        'Saisons, bis ein Fünftel der Kapazität fehlt: Zyklenverschleiß bei diesen Tiefen und die vergehende Zeit',
      full: 'längste Zeit zwischen zwei vollen Ladungen während der Nutzung',
      unattended: 'Stunden, in denen geladen wurde und niemand wach in der Nähe war',
      energy: 'E(Netz) = Σ Ladungen ∫ V · I dt / η(Ladegerät)',
      cost: 'Σ Preis der Stunde · Energie aus dem Netz',
    },
    weeks: 'Wochen der Saison',
    outings: 'Fahrten',
    start: 'Niedrigste gewünschte Ladung',
    deepest: 'Tiefste Fahrt',
    fullCharges: 'Volle Ladungen',
    chargingHours: 'Stunden am Ladegerät',
    source:
      'Aus der simulierten Saison abgelesen (hergeleitet): jede Fahrt und jede Ladung, Tag für Tag.',
    wearSource:
      'Zyklenleben der Chemie über Tiefe und Temperatur (gängige Praxis), über die Saison summiert (hergeleitet).',
    validity:
      'Ob eine Fahrt stattfindet, wird mit dem Startwert unter Ort, Saison, Tarif gezogen: Ein anderer verschiebt die Zahlen ein wenig.',
  },
};
