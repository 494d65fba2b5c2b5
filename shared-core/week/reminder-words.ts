import type { Language } from '../plan/language.ts';

/** Sentences of calendar and charge card. */
export interface ReminderWords {
  readonly plugIn: (pack: string) => string;
  readonly plugInWhy: (charger: string, hours: string, percent: string) => string;
  readonly topUp: (pack: string) => string;
  readonly topUpWhy: (percent: string) => string;
  readonly store: (pack: string) => string;
  readonly storeLead: string;
  readonly storeLithium: (percent: string) => string;
  readonly wake: (pack: string) => string;
  readonly wakeWhy: string;
  readonly care: string;
  readonly second: (name: string) => string;
  readonly calendar: (machine: string) => string;
}

export const reminderWords: Readonly<Record<Language, ReminderWords>> = {
  en: {
    plugIn: (pack) => `Plug in: ${pack}`,
    plugInWhy: (charger, hours, percent) =>
      `${charger}. Needs about ${hours}, starting near ${percent}.`,
    topUp: (pack) => `Top up stored pack: ${pack}`,
    topUpWhy: (percent) =>
      `Charge to full and let it rest. It should never stand below ${percent}.`,
    store: (pack) => `Prepare for storage: ${pack}`,
    storeLead: 'Charge to full, open the isolator, store cool and dry.',
    storeLithium: (percent) =>
      `Bring it to ${percent}, open the isolator, store cool, dry and above freezing.`,
    wake: (pack) => `Before the season: ${pack}`,
    wakeWhy:
      'Read the rest voltage of every block, charge to full, try the isolator and the brake.',
    care: "Follow the makers' instructions of charger and blocks; they come before this reminder.",
    second: (name) => `second pack (${name})`,
    calendar: (machine) => `${machine}: charging`,
  },
  de: {
    plugIn: (pack) => `Anstecken: ${pack}`,
    plugInWhy: (charger, hours, percent) =>
      `${charger}. Braucht etwa ${hours}, ab etwa ${percent}.`,
    topUp: (pack) => `Eingelagertes Pack nachladen: ${pack}`,
    topUpWhy: (percent) => `Ganz laden und ruhen lassen. Es soll nie unter ${percent} stehen.`,
    store: (pack) => `Einlagern vorbereiten: ${pack}`,
    storeLead: 'Ganz laden, Trennschalter öffnen, kühl und trocken lagern.',
    storeLithium: (percent) =>
      `Auf ${percent} bringen, Trennschalter öffnen, kühl, trocken und frostfrei lagern.`,
    wake: (pack) => `Vor der Saison: ${pack}`,
    wakeWhy: 'Ruhespannung jedes Blocks messen, ganz laden, Trennschalter und Bremse prüfen.',
    care: 'Die Anleitungen von Ladegerät und Blöcken gehen dieser Erinnerung vor.',
    second: (name) => `zweites Pack (${name})`,
    calendar: (machine) => `${machine}: Laden`,
  },
};
