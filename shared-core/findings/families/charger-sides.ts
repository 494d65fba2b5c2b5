import type { MatchAspect } from '../../charge/match-result.ts';
import type { Words } from '../../plan/language.ts';

type Side = NonNullable<MatchAspect['side']>;
type Family = 'lead' | 'lithium';

/** What an end or float voltage off to one side does to the pack. */
export function voltageSides(aspect: MatchAspect['aspect'], side: Side, family: Family): Words {
  if (side === 'above') {
    if (family === 'lithium' && aspect === 'float-voltage') {
      return {
        en: 'Held full for days, lithium ages fast, and charge flows on into cells that are full.',
        de: 'Tagelang voll gehalten altert Lithium schnell, und in volle Zellen fließt weiter Ladung.',
      };
    }
    if (family === 'lithium') {
      return {
        en: 'The cells are overcharged unless the BMS opens each time; it is the last guard, not a charge limit. Overcharged lithium can burn.',
        de: 'Die Zellen werden überladen, wenn nicht jedes Mal das BMS öffnet; es ist die letzte Sicherung, keine Ladegrenze. Überladenes Lithium kann brennen.',
      };
    }
    return {
      en: 'The blocks gas, lose water they cannot get back and run warm; sealed ones dry out and may swell.',
      de: 'Die Blöcke gasen, verlieren Wasser, das nicht zurückkommt, und werden warm; verschlossene trocknen aus und können sich wölben.',
    };
  }
  if (family === 'lithium') {
    return {
      en: 'The pack is not filled, and its cell groups are never balanced: the minutes shown are not reached.',
      de: 'Der Akku wird nicht voll, und seine Zellgruppen werden nie ausgeglichen: Die gezeigten Minuten werden nicht erreicht.',
    };
  }
  return aspect === 'float-voltage'
    ? {
        en: 'Left on the charger it still loses charge slowly; lead that is never quite full sulphates.',
        de: 'Am Ladegerät verliert er trotzdem langsam Ladung; nie ganz volles Blei sulfatiert.',
      }
    : {
        en: 'The lamp shows full before the blocks are; lead left short of full sulphates and loses capacity within months.',
        de: 'Die Lampe zeigt voll, bevor die Blöcke es sind; Blei, das nie voll wird, sulfatiert und verliert binnen Monaten Kapazität.',
      };
}

/** What a charge current off to one side does. */
export function currentSides(aspect: MatchAspect['aspect'], side: Side, family: Family): Words {
  if (aspect === 'port') {
    return {
      en: 'Plug and lead of the charge port overheat; their plastic softens and the contacts touch or burn.',
      de: 'Stecker und Leitung der Ladebuchse werden zu heiß; der Kunststoff erweicht, Kontakte berühren sich oder schmoren.',
    };
  }
  if (side === 'below') {
    return {
      en: 'It takes more than a night, and the acid layers; the pack is rarely full when it is wanted.',
      de: 'Es dauert länger als eine Nacht, und die Säure schichtet sich; der Akku ist selten voll, wenn er gebraucht wird.',
    };
  }
  return family === 'lithium'
    ? {
        en: 'The cells run hot and age, or the BMS opens and the charge stops at once.',
        de: 'Die Zellen werden heiß und altern, oder das BMS öffnet, und die Ladung endet sofort.',
      }
    : {
        en: 'The blocks run hot and gas from the first minutes of the held voltage; sealed ones dry out.',
        de: 'Die Blöcke werden heiß und gasen von den ersten Minuten der gehaltenen Spannung an; verschlossene trocknen aus.',
      };
}
