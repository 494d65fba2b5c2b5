import { texts } from './spoken.ts';

export interface WhatIfTexts {
  readonly open: (field: string) => string;
  readonly title: string;
  readonly lead: string;
  readonly value: (field: string) => string;
  readonly before: (value: string) => string;
  readonly option: string;
  readonly putBack: string;
  readonly keep: string;
}

export const whatIfTexts = texts('whatIf', {
  open: (field) => `What if? Try other values of ${field}`,
  title: 'What if?',
  lead: 'Every option follows the slider. Put it back, or keep it as one step.',
  value: (field) => `Trial value of ${field}`,
  before: (value) => `was ${value}`,
  option: 'Option',
  putBack: 'Put back',
  keep: 'Keep',
});
