import { texts } from './spoken.ts';

export interface GroupTexts {
  readonly title: string;
  readonly lead: string;
  readonly none: string;
  readonly add: string;
  readonly changed: string;
  readonly group: string;
  readonly groupAt: (group: number) => string;
  readonly remove: (group: number) => string;
}

export const groupTexts = texts('groups', {
  title: 'Cell groups inside it',
  lead: 'Groups of a sealed block that are weaker or less full than their neighbours: the BMS stops at the first one.',
  none: 'All groups are alike.',
  add: 'A group differs',
  changed: 'Cell groups that differ',
  group: 'Group',
  groupAt: (group) => `group ${group}`,
  remove: (group) => `Group ${group} like the others again`,
});
