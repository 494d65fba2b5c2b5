import type { SeasonWorkingTexts } from '../season-workings.ts';

export const seasonWorkings: SeasonWorkingTexts = {
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
};
