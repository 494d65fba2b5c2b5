import type { HostFailureCode } from '#core/shell/failure.ts';
import { texts } from './spoken.ts';

export interface DocumentTexts {
  readonly failure: Readonly<Record<HostFailureCode, string>>;
  readonly titles: Readonly<Record<'open' | 'save' | 'export', string>>;
  readonly file: string;
  readonly field: string;
  readonly untouched: string;
  readonly ok: string;
  readonly saved: (name: string) => string;
  readonly opened: (name: string) => string;
  readonly migrated: (from: number) => string;
  readonly leftOut: (fields: string) => string;
  readonly reverted: string;
  readonly back: string;
  readonly unsavedTitle: (name: string) => string;
  readonly unsavedLead: string;
  readonly save: string;
  readonly discard: string;
  readonly stay: string;
  readonly changedTitle: string;
  readonly changedLead: string;
  readonly replace: string;
  readonly readAgain: string;
  readonly recoveryTitle: string;
  readonly recoveryLead: string;
  readonly recoveryDamaged: string;
  readonly take: string;
  readonly throwAway: string;
  readonly later: string;
  readonly readOnly: (name: string) => string;
  readonly nothingToRecover: string;
  readonly recoveryFails: string;
  readonly recovered: (name: string) => string;
  readonly savedAt: (time: string) => string;
  readonly sampleTitle: string;
  readonly sampleLead: string;
  readonly samples: Readonly<Record<string, { readonly name: string; readonly about: string }>>;
  readonly duplicate: (name: string) => string;
  readonly duplicated: string;
  readonly exported: (name: string) => string;
  readonly reportCopied: string;
  readonly dropHere: string;
  readonly notText: string;
}

export const documentTexts = texts('documents', {
  failure: {
    cancelled: 'Nothing was changed.',
    'too-large': 'The file is larger than a plan can be.',
    missing: 'The file is no longer where it was.',
    unreadable: 'The file cannot be read. It may be locked, or you lack the right to read it.',
    'read-only': 'The file is read-only. Save the plan under another name.',
    'disk-full': 'The disk is full. Make room, then save again; the plan is still here.',
    'in-use': 'Another program holds the file. Close it there, then try again.',
    'changed-outside': 'Another program has changed the file.',
    'too-new': 'The plan was written by a newer version of this program.',
    'not-a-plan': 'This file is not a plan.',
    'bad-plan': 'The plan in this file has a fault.',
    'bad-request': 'The program asked for something it may not ask for.',
    'unknown-document': 'The program has lost track of the file. Save under a name again.',
    damaged: 'The copy is damaged and cannot be used.',
    busy: 'An earlier step is still at work. Try again in a moment.',
    unsupported: 'This cannot be done in a browser; the desktop program can.',
    refused: 'The system refused this.',
    failed: 'This did not work.',
  },
  titles: {
    open: 'The plan was not opened',
    save: 'The plan was not saved',
    export: 'Nothing was exported',
  },
  file: 'File',
  field: 'Field',
  untouched: 'The plan you had open is unchanged.',
  ok: 'Close',
  saved: (name) => `Saved ${name}`,
  opened: (name) => `Opened ${name}`,
  migrated: (from) =>
    `This file has the older format ${from}. It was converted in memory; the file changes only when you save.`,
  leftOut: (fields) => `Fields this program does not know were left out: ${fields}`,
  reverted: 'Went back to the saved plan',
  back: 'Undo',
  unsavedTitle: (name) => `Save the changes to “${name}”?`,
  unsavedLead: 'Without saving, the changes since the last save are lost.',
  save: 'Save',
  discard: 'Do not save',
  stay: 'Back to the plan',
  changedTitle: 'The file has changed outside',
  changedLead: 'Another program has written this file since it was opened here.',
  replace: 'Replace it with this plan',
  readAgain: 'Read it again, drop my changes',
  recoveryTitle: 'Unsaved work was found',
  recoveryLead:
    'The program ended without saving these plans. Nothing is restored unless you say so.',
  recoveryDamaged: 'Damaged: it can only be thrown away',
  take: 'Open this copy',
  throwAway: 'Throw away',
  later: 'Decide later',
  readOnly: (name) => `${name} is read-only; saving asks for another name`,
  nothingToRecover: 'No unsaved work is kept here',
  recoveryFails: 'The recovery copy cannot be written. Save the plan to be safe.',
  recovered: (name) => `Opened the recovery copy of ${name}; save it to keep it`,
  savedAt: (time) => `kept ${time}`,
  sampleTitle: 'Open a sample plan',
  sampleLead: 'Invented data. Change whatever you like; saving asks for a name.',
  samples: {
    'orchard-cart': {
      name: 'Orchard cart',
      about:
        'A 24 V hand-guided cart with work lights and radio: two blocks in series, one lithium pack, or two strings?',
    },
    'campsite-tug': {
      name: 'Campsite tug',
      about: 'A seated tug on sloping lanes: 24 V lead against 36 V lithium.',
    },
    'market-scooter': {
      name: 'Market scooter',
      about: 'A scooter in daily use with one weak block: a new pair, or lithium?',
    },
  },
  duplicate: (name) => `${name} (copy)`,
  duplicated: 'This is a copy now; the first file stays as it is',
  exported: (name) => `Exported ${name}`,
  reportCopied: 'The report is on the clipboard',
  dropHere: 'Drop the plan file to open it',
  notText: 'Drop one plan file (.wain).',
});
