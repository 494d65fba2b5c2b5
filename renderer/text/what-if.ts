import type { Texts } from './use-text.ts';

interface WhatIfTexts {
  readonly open: (field: string) => string;
  readonly title: string;
  readonly lead: string;
  readonly value: (field: string) => string;
  readonly before: (value: string) => string;
  readonly option: string;
  readonly putBack: string;
  readonly keep: string;
}

export const whatIfTexts: Texts<WhatIfTexts> = {
  en: {
    open: (field) => `What if? Try other values of ${field}`,
    title: 'What if?',
    lead: 'Every option follows the slider. Put it back, or keep it as one step.',
    value: (field) => `Trial value of ${field}`,
    before: (value) => `was ${value}`,
    option: 'Option',
    putBack: 'Put back',
    keep: 'Keep',
  },
  de: {
    open: (field) => `Was wäre wenn? Andere Werte für ${field} ausprobieren`,
    title: 'Was wäre wenn?',
    lead: 'Alle Varianten folgen dem Schieber. Zurückstellen oder als einen Schritt behalten.',
    value: (field) => `Probewert für ${field}`,
    before: (value) => `vorher ${value}`,
    option: 'Variante',
    putBack: 'Zurückstellen',
    keep: 'Behalten',
  },
};
