import type { LimitGroup } from '#core/findings/limits.ts';
import type { RuleState } from '#core/findings/rule-list.ts';
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
  readonly rules: string;
  readonly rulesLead: string;
  readonly limits: string;
  readonly limitsLead: string;
  readonly groups: Readonly<Record<LimitGroup['id'], string>>;
  readonly usual: (value: string) => string;
  readonly reset: (title: string) => string;
  readonly resetAll: string;
  readonly usedBy: (ids: string) => string;
  readonly ruleTab: string;
  readonly rule: string;
  readonly looksFor: string;
  readonly restsOn: string;
  readonly state: string;
  readonly states: Readonly<Record<RuleState['state'], string>>;
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
    rules: 'Rules and limits',
    rulesLead: 'Every rule, and what it says of this plan.',
    limits: 'Limits',
    limitsLead:
      'Where sources disagree, the limit is yours. It is kept in this plan and every rule asks it at once.',
    groups: {
      pack: 'Pack and run',
      charge: 'Charging',
      supply: 'Supply of accessories',
      drive: 'Motors, start and brakes',
      wiring: 'Wires and fuses',
      care: 'Care and storage',
    },
    usual: (value) => `Usual: ${value}`,
    reset: (title) => `Back to the usual: ${title}`,
    resetAll: 'All back to the usual',
    usedBy: (ids) => `asked by ${ids}`,
    ruleTab: 'Rules',
    rule: 'Rule',
    looksFor: 'What it looks for',
    restsOn: 'Rests on',
    state: 'In this plan',
    states: { stands: 'stands', 'not-checked': 'not checked', clear: 'nothing found' },
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
    rules: 'Regeln und Grenzen',
    rulesLead: 'Jede Regel, und was sie zu diesem Plan sagt.',
    limits: 'Grenzen',
    limitsLead:
      'Wo Quellen uneins sind, bestimmen Sie die Grenze. Sie steht in diesem Plan, und jede Regel fragt sie sofort.',
    groups: {
      pack: 'Akku und Fahrt',
      charge: 'Laden',
      supply: 'Versorgung des Zubehörs',
      drive: 'Motoren, Anfahren und Bremsen',
      wiring: 'Leitungen und Sicherungen',
      care: 'Pflege und Lagerung',
    },
    usual: (value) => `Üblich: ${value}`,
    reset: (title) => `Zurück zum Üblichen: ${title}`,
    resetAll: 'Alle zurück zum Üblichen',
    usedBy: (ids) => `gefragt von ${ids}`,
    ruleTab: 'Regeln',
    rule: 'Regel',
    looksFor: 'Wonach sie sucht',
    restsOn: 'Beruht auf',
    state: 'In diesem Plan',
    states: { stands: 'trifft zu', 'not-checked': 'nicht geprüft', clear: 'nichts gefunden' },
  },
};
