import { texts } from './spoken.ts';

interface Door {
  readonly question: string;
  readonly way: string;
}

export interface DoorTexts {
  readonly title: string;
  readonly close: string;
  readonly doors: Readonly<Record<'pack' | 'accessories' | 'charge', Door>>;
}

export const doorTexts = texts('doors', {
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
});
