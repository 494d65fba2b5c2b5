import { texts } from './spoken.ts';

export interface MenuTexts {
  readonly theme: string;
  readonly themes: Readonly<Record<'system' | 'light' | 'dark', string>>;
  readonly language: string;
  readonly units: string;
  readonly unitNames: Readonly<Record<'metric' | 'us', string>>;
  readonly settings: string;
  readonly recent: string;
  readonly forgetRecent: string;
  readonly palettePlaceholder: string;
  readonly paletteNone: string;
  readonly shortcutsTitle: string;
  readonly inFields: string;
  readonly inFieldsRows: readonly (readonly [keys: string, does: string])[];
  readonly aboutLead: string;
  readonly aboutCare: string;
  readonly version: string;
  readonly licences: string;
  readonly formulasLead: string;
  readonly formulasFilter: string;
}

export const menuTexts = texts('menu', {
  theme: 'Appearance',
  themes: { system: 'As the system', light: 'Light', dark: 'Dark' },
  language: 'Language',
  units: 'Units',
  unitNames: { metric: 'Metric', us: 'US customary' },
  settings: 'Settings',
  recent: 'Opened before',
  forgetRecent: 'Forget these files',
  palettePlaceholder: 'Type a command, a place or an option',
  paletteNone: 'Nothing of that name',
  shortcutsTitle: 'Keyboard shortcuts',
  inFields: 'In number fields and charts',
  inFieldsRows: [
    ['↑ ↓', 'one step up or down'],
    ['Page ↑ ↓', 'ten steps'],
    ['Enter', 'take over what was typed'],
    ['Esc', 'back to the value before'],
    ['Alt Enter', 'try other values by a slider'],
    ['← →', 'move the read-out of a chart'],
    ['+ − 0', 'zoom a chart in, out, to all'],
    ['Shift ← →', 'move the cut-out of a chart'],
  ],
  aboutLead:
    'Choose, run, charge, wire and verify the battery of a small electric machine before buying it.',
  aboutCare:
    'Figures are estimates. Work on batteries can burn and injure: local codes, makers’ instructions and licensed practice come first.',
  version: 'Version',
  licences: 'Packages inside and their licences',
  formulasLead: 'Every published formula the figures rest on, with its source and range.',
  formulasFilter: 'Find a formula',
});
