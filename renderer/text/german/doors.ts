import type { DoorTexts } from '../doors.ts';

export const doors: DoorTexts = {
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
};
