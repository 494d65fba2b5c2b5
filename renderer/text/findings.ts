import type { LimitGroup } from '#core/findings/limits.ts';
import type { RuleState } from '#core/findings/rule-list.ts';
import { texts } from './spoken.ts';

export interface FindingTexts {
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
export const findingTexts = texts('findings', {
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
});
