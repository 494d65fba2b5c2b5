import { texts } from './spoken.ts';
import type { ChargerMatch } from '#core/charge/match-result.ts';

export interface StripTexts {
  readonly title: string;
  readonly option: string;
  readonly runTime: string;
  readonly scale: (goal: string, outing: string) => string;
  readonly endedBy: string;
  readonly speed: string;
  readonly accessories: string;
  readonly energy: string;
  readonly charge: string;
  readonly mass: string;
  readonly price: string;
  readonly findings: string;
  readonly fits: Readonly<Record<ChargerMatch['verdict'], string>>;
  readonly noCharger: string;
  readonly noFinding: string;
  readonly showFindings: (name: string) => string;
  readonly barOf: (name: string, minutes: string, percent: string) => string;
  readonly outing: string;
}

export const stripTexts = texts('strip', {
  title: 'Options at a glance',
  option: 'Option',
  runTime: 'Runs',
  scale: (goal, outing) => `${outing}, goal ${goal}`,
  endedBy: 'Ended by',
  speed: 'Top speed',
  accessories: 'Accessories',
  energy: 'Delivers',
  charge: 'Charger',
  mass: 'Mass',
  price: 'Price',
  findings: 'Findings',
  fits: { fits: 'fits', limits: 'fits, slowly', misfits: 'does not fit', unknown: 'not known' },
  noCharger: 'none chosen',
  noFinding: 'none',
  showFindings: (name) => `Findings of ${name}`,
  barOf: (name, minutes, percent) => `${name} runs ${minutes}, ${percent} % of the goal`,
  outing: 'Outing',
});
