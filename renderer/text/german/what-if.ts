import type { WhatIfTexts } from '../what-if.ts';

export const whatIf: WhatIfTexts = {
  open: (field) => `Was wäre wenn? Andere Werte für ${field} ausprobieren`,
  title: 'Was wäre wenn?',
  lead: 'Alle Varianten folgen dem Schieber. Zurückstellen oder als einen Schritt behalten.',
  value: (field) => `Probewert für ${field}`,
  before: (value) => `vorher ${value}`,
  option: 'Variante',
  putBack: 'Zurückstellen',
  keep: 'Behalten',
};
