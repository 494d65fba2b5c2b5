import type { Texts } from './use-text.ts';

interface FindingTexts {
  readonly concerns: (names: string) => string;
  readonly everyOption: string;
  readonly takeOver: string;
  readonly forOptions: (does: string, names: string) => string;
  readonly takenOver: (does: string) => string;
  readonly bringBack: string;
  readonly takeOverHint: string;
  readonly inWiring: string;
  readonly inWiringLead: string;
  readonly inWiringNone: string;
  readonly openQuestions: (count: number) => string;
  readonly showAll: string;
}

/** Words of the findings list beyond those the shell shares. */
export const findingTexts: Texts<FindingTexts> = {
  en: {
    concerns: (names) => `Concerns: ${names}`,
    everyOption: 'every option',
    takeOver: 'One step:',
    forOptions: (does, names) => `${does}, for ${names}`,
    takenOver: (does) => `Done: ${does}`,
    bringBack: 'Undo',
    takeOverHint: 'Changes the plan only; the part still has to be fitted.',
    inWiring: 'Findings in the wiring',
    inWiringLead: 'What the rules say of branches, fuses, switches and readings.',
    inWiringNone: 'Nothing stands against this wiring.',
    openQuestions: (count) => (count === 1 ? '1 not checked' : `${count} not checked`),
    showAll: 'All findings',
  },
  de: {
    concerns: (names) => `Betrifft: ${names}`,
    everyOption: 'jede Variante',
    takeOver: 'In einem Schritt:',
    forOptions: (does, names) => `${does}, für ${names}`,
    takenOver: (does) => `Erledigt: ${does}`,
    bringBack: 'Rückgängig',
    takeOverHint: 'Ändert nur den Plan; das Teil muss noch eingebaut werden.',
    inWiring: 'Befunde zur Verkabelung',
    inWiringLead: 'Was die Regeln zu Zweigen, Sicherungen, Schaltern und Messwerten sagen.',
    inWiringNone: 'Gegen diese Verkabelung spricht nichts.',
    openQuestions: (count) => `${count} nicht geprüft`,
    showAll: 'Alle Befunde',
  },
};
