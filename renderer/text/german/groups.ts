import type { GroupTexts } from '../groups.ts';

export const groups: GroupTexts = {
  title: 'Zellgruppen darin',
  lead: 'Gruppen eines geschlossenen Blocks, die schwächer oder weniger voll sind als ihre Nachbarn: Das BMS schaltet bei der ersten ab.',
  none: 'Alle Gruppen sind gleich.',
  add: 'Eine Gruppe weicht ab',
  changed: 'Abweichende Zellgruppen',
  group: 'Gruppe',
  groupAt: (group) => `Gruppe ${group}`,
  remove: (group) => `Gruppe ${group} wieder wie die anderen`,
};
