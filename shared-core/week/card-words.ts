import type { Language } from '../plan/language.ts';
import type { Chemistry } from '../plan/schema/block.ts';

/** Words of the charge card. */
export interface CardWords {
  readonly title: string;
  readonly pack: string;
  readonly chemistry: string;
  readonly chemistryNames: Readonly<Record<Chemistry, string>>;
  readonly groups: string;
  readonly endVoltage: (temperature: string) => string;
  readonly float: string;
  readonly noFloat: string;
  readonly charger: string;
  readonly none: string;
  readonly hours: string;
  readonly atGreen: string;
  readonly air: string;
  readonly airValue: (flow: string, opening: string) => string;
  readonly leadSteps: readonly string[];
  readonly lithiumSteps: readonly string[];
  readonly leadCautions: readonly string[];
  readonly lithiumCautions: readonly string[];
  readonly cautions: readonly string[];
}

export const cardWords: Readonly<Record<Language, CardWords>> = {
  en: {
    title: 'charge card',
    pack: 'Pack',
    chemistry: 'Chemistry',
    chemistryNames: {
      agm: 'lead, AGM',
      gel: 'lead, gel',
      flooded: 'lead, flooded',
      lfp: 'lithium iron phosphate',
      nmc: 'lithium NMC',
    },
    groups: 'cell groups in series',
    endVoltage: (temperature) => `End voltage at ${temperature}`,
    float: 'Float voltage',
    noFloat: 'none: unplug when done',
    charger: 'Charger',
    none: 'none chosen',
    hours: 'After the outing it needs',
    atGreen: 'Charge when the charger is done',
    air: 'Fresh air while charging',
    airValue: (flow, opening) => `${flow}; openings of ${opening} low and high`,
    leadSteps: [
      'Plug in after every use, the same day, and leave it until the charger is done.',
      'Once a month let it finish even if little was used.',
      'Never store it discharged: top up every month in storage.',
    ],
    lithiumSteps: [
      'Plug in when half is used or before the next outing; it need not be full.',
      'Unplug when the charger is done.',
      'For storage bring it to 40 to 60 % and open the isolator.',
    ],
    leadCautions: [
      'Charging sets free hydrogen: keep the place open to fresh air, no flame, no sparks.',
      'A hot, swollen or smelling block: switch the charger off at the wall and leave it alone.',
    ],
    lithiumCautions: [
      'Never charge below 0 °C; let a cold pack warm up first.',
      'Charge on a surface that does not burn, within sight, not on the way out, never where people sleep.',
      'A swollen, hot or damaged pack: do not charge; take it outdoors if that is safe and call for help.',
    ],
    cautions: [
      "The makers' instructions, local codes and licensed practice come before this card.",
    ],
  },
  de: {
    title: 'Ladekarte',
    pack: 'Pack',
    chemistry: 'Chemie',
    chemistryNames: {
      agm: 'Blei, AGM',
      gel: 'Blei, Gel',
      flooded: 'Blei, nass',
      lfp: 'Lithium-Eisenphosphat',
      nmc: 'Lithium NMC',
    },
    groups: 'Zellgruppen in Reihe',
    endVoltage: (temperature) => `Ladeschlussspannung bei ${temperature}`,
    float: 'Erhaltungsspannung',
    noFloat: 'keine: nach dem Laden abstecken',
    charger: 'Ladegerät',
    none: 'keines gewählt',
    hours: 'Nach der Fahrt braucht es',
    atGreen: 'Ladung, wenn das Ladegerät fertig ist',
    air: 'Frischluft beim Laden',
    airValue: (flow, opening) => `${flow}; Öffnungen von ${opening} unten und oben`,
    leadSteps: [
      'Nach jeder Fahrt am selben Tag anstecken und lassen, bis das Ladegerät fertig ist.',
      'Einmal im Monat auch dann zu Ende laden, wenn wenig verbraucht wurde.',
      'Nie entladen lagern: eingelagert jeden Monat nachladen.',
    ],
    lithiumSteps: [
      'Anstecken, wenn die Hälfte verbraucht ist oder vor der nächsten Fahrt; voll muss es nicht sein.',
      'Abstecken, wenn das Ladegerät fertig ist.',
      'Zum Lagern auf 40 bis 60 % bringen und den Trennschalter öffnen.',
    ],
    leadCautions: [
      'Beim Laden entsteht Wasserstoff: für Frischluft sorgen, keine Flamme, keine Funken.',
      'Ein heißer, geblähter oder riechender Block: Ladegerät an der Steckdose trennen und Abstand halten.',
    ],
    lithiumCautions: [
      'Nie unter 0 °C laden; ein kaltes Pack erst warm werden lassen.',
      'Auf nicht brennbarer Fläche laden, in Sichtweite, nicht auf dem Fluchtweg, nie wo Menschen schlafen.',
      'Ein geblähtes, heißes oder beschädigtes Pack nicht laden; ins Freie bringen, wenn das gefahrlos geht, und Hilfe rufen.',
    ],
    cautions: ['Herstellerangaben, örtliche Vorschriften und Fachleute gehen dieser Karte vor.'],
  },
};
