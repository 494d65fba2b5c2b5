import type { EndCause } from '#core/run/result.ts';
import type { Severity } from '#core/findings/finding.ts';
import { texts } from './spoken.ts';

export interface PlaceTexts {
  readonly machine: string;
  readonly packs: string;
  readonly run: string;
  readonly charging: string;
  readonly wiring: string;
  readonly bench: string;
  readonly sheet: string;
}

export interface AppTexts {
  readonly places: PlaceTexts;
  readonly placesLabel: string;
  readonly skip: string;
  readonly more: string;
  readonly find: string;
  readonly undo: (name: string | null) => string;
  readonly redo: (name: string | null) => string;
  readonly unsaved: string;
  readonly invented: string;
  readonly findings: string;
  readonly noFindings: string;
  readonly severity: Readonly<Record<Severity, (count: number) => string>>;
  readonly severityWord: Readonly<Record<Severity, string>>;
  readonly notChecked: (count: number) => string;
  readonly notCheckedHead: string;
  readonly notCheckedLead: string;
  readonly all: string;
  readonly ofMachine: string;
  readonly consequence: string;
  readonly remedy: string;
  readonly figures: string;
  readonly source: string;
  readonly sourceClass: Readonly<
    Record<'standard' | 'handbook' | 'common-practice' | 'derived', string>
  >;
  readonly mend: string;
  readonly care: string;
  readonly computing: string;
  readonly upToDate: (ms: number) => string;
  readonly stale: string;
  readonly cancel: string;
  readonly again: string;
  readonly standStill: string;
  readonly failed: string;
  readonly figuresReady: string;
  readonly ended: Readonly<Record<EndCause, string>>;
  readonly saved: (name: string) => string;
  readonly notSavedYet: string;
  readonly recoveryKept: string;
  /** The same in the status line, where there is room. */
  readonly copyKept: string;
  readonly goalOf: (minutes: string) => string;
  readonly crash: string;
  readonly crashLead: string;
  readonly crashRetry: string;
  readonly loading: string;
}

export const appTexts = texts('app', {
  places: {
    machine: 'Machine',
    packs: 'Packs',
    run: 'Run',
    charging: 'Charging',
    wiring: 'Wiring',
    bench: 'Bench',
    sheet: 'Sheet',
  },
  placesLabel: 'Places',
  skip: 'Skip to the place',
  more: 'Commands and settings',
  find: 'Find a command',
  undo: (name) => (name === null ? 'Undo' : `Undo: ${name}`),
  redo: (name) => (name === null ? 'Redo' : `Redo: ${name}`),
  unsaved: 'unsaved changes',
  invented: 'Sample with invented data',
  findings: 'Findings',
  noFindings: 'No findings',
  severity: {
    stop: (count) => `${count} stop`,
    warn: (count) => `${count} warn`,
    note: (count) => (count === 1 ? '1 note' : `${count} notes`),
  },
  severityWord: { stop: 'Stop', warn: 'Warn', note: 'Note' },
  notChecked: (count) => `${count} not checked`,
  notCheckedHead: 'Not checked',
  notCheckedLead: 'These rules lack an input. Until it is given, they say nothing.',
  all: 'All options',
  ofMachine: 'Machine',
  consequence: 'What follows',
  remedy: 'What to do',
  figures: 'Figures',
  source: 'Source',
  sourceClass: {
    standard: 'standard or regulation',
    handbook: 'handbook or data sheet',
    'common-practice': 'common practice',
    derived: 'derived',
  },
  mend: 'Mend it here:',
  care: 'Local codes, makers’ instructions and licensed practice come first.',
  computing: 'Computing…',
  upToDate: (ms) => `Figures up to date (${ms} ms)`,
  stale: 'Figures are of the plan before the last edit',
  cancel: 'Cancel',
  again: 'Compute again',
  standStill: 'The figures stand still until this is mended:',
  failed: 'The figures could not be computed:',
  figuresReady: 'Figures are up to date',
  ended: {
    'controller-cutoff': 'Controller cutoff',
    'bms-group-low': 'BMS, cell low',
    'bms-over-current': 'BMS, overcurrent',
    'string-fuse': 'String fuse',
    'main-fuse': 'Main fuse',
    'depth-limit': 'Depth limit',
    'supply-collapse': 'Pack cannot feed the load',
    'time-limit': 'Longest time reached',
    'not-computable': 'Could not be computed',
  },
  saved: (name) => `Saved: ${name}`,
  notSavedYet: 'Not saved to a file yet',
  copyKept: 'recovery copy kept',
  recoveryKept: 'A recovery copy is kept a second after each edit',
  goalOf: (minutes) => `goal ${minutes}`,
  crash: 'This place has run into a fault',
  crashLead: 'The plan is untouched. Save it, then show the place again.',
  crashRetry: 'Show again',
  loading: 'Loading…',
});
