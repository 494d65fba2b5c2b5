import type { Texts } from './use-text.ts';

interface Door {
  readonly question: string;
  readonly way: string;
}

interface DoorTexts {
  readonly title: string;
  readonly close: string;
  readonly doors: Readonly<Record<'pack' | 'accessories' | 'charge', Door>>;
}

export const doorTexts: Texts<DoorTexts> = {
  en: {
    title: 'Where to begin',
    close: 'Put the questions away',
    doors: {
      pack: {
        question: 'Which pack?',
        way: 'Options side by side: blocks, capacity, mass, price. The strip above says which runs longest.',
      },
      accessories: {
        question: 'Do my accessories cost run time?',
        way: 'Switch lights and radio on and off and read the minutes.',
      },
      charge: {
        question: 'When must I charge?',
        way: 'Whether the charger fits, and the hours to full.',
      },
    },
  },
  de: {
    title: 'Womit anfangen',
    close: 'Die Fragen wegräumen',
    doors: {
      pack: {
        question: 'Welcher Akku?',
        way: 'Varianten nebeneinander: Blöcke, Kapazität, Masse, Preis. Die Leiste oben sagt, welche am längsten läuft.',
      },
      accessories: {
        question: 'Kosten meine Verbraucher Laufzeit?',
        way: 'Licht und Radio ein- und ausschalten und die Minuten ablesen.',
      },
      charge: {
        question: 'Wann muss ich laden?',
        way: 'Ob das Ladegerät passt, und die Stunden bis voll.',
      },
    },
  },
};
