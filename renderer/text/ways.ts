import { texts } from './spoken.ts';

/** Words of the ways a leg's load may be known in: logs attached to legs, ways set beside each other. */
export interface WaysTexts {
  readonly logTitle: string;
  readonly logLead: string;
  readonly logPick: string;
  readonly logNone: string;
  readonly logTake: (run: string) => string;
  readonly logTakeShort: string;
  readonly logEmpty: string;
  readonly logCharges: string;
  readonly logTaken: string;
  readonly logOther: string;
  readonly logFigures: (length: string, mean: string, peak: string, charge: string) => string;
  readonly replay: Readonly<Record<'current' | 'power', string>>;
  readonly noVolts: string;
  readonly title: string;
  readonly lead: string;
  readonly onlyOne: string;
  readonly way: string;
  readonly ways: Readonly<Record<'amps' | 'log' | 'model', string>>;
  readonly option: string;
  readonly known: (known: number, of: number) => string;
  readonly counts: string;
  readonly count: string;
  readonly countLabel: (way: string) => string;
  readonly minutes: string;
  readonly average: string;
  readonly peak: string;
  readonly round: string;
  readonly scale: string;
  readonly scaleLabel: (way: string) => string;
  readonly scaled: (percent: string) => string;
  readonly scaledFrom: (way: string, outing: string) => string;
  readonly scaledToCruise: (speed: string, surface: string) => string;
  readonly provenance: (
    source: string,
    read: string,
    model: string,
    before: string,
    after: string,
  ) => string;
  readonly takeBack: string;
  readonly fails: Readonly<Record<'not-computable' | 'nothing-shared' | 'out-of-range', string>>;
  readonly working: string;
  readonly alsoKnown: (kinds: string) => string;
}

export const waysTexts = texts('ways', {
  logTitle: 'Attach a log',
  logLead:
    'A watt-meter log of the drive as text: time, amperes and volts. Take one of its runs as the load of this leg; the file itself is not kept.',
  logPick: 'Choose a log file',
  logNone: 'No log yet. Logs put on the bench stand here as well.',
  logTake: (run) => `Take ${run} for this leg`,
  logTakeShort: 'Take',
  logEmpty: 'This run has no rows of any length.',
  logCharges:
    'Nothing is taken out of the pack in a run that cannot be taken: check the sign of the current under "Change columns".',
  logTaken: 'Attach log',
  logOther: 'Choose another log',
  logFigures: (length, mean, peak, charge) =>
    `${length} logged: ${mean} on average, ${peak} at most, ${charge} in all.`,
  replay: { current: 'Amps as logged', power: 'Watts as logged' },
  noVolts: 'The log has no volts: it can only be replayed as amps.',
  title: 'Ways of giving the load',
  lead: 'The same outing by amps, by a log and by the motor model. Change how a leg is known above: what it had before is kept and stands here.',
  onlyOne:
    'Only one way is known so far. Give a leg its amps, a log or the motor model as well, and they stand side by side here.',
  way: 'Way',
  ways: { amps: 'Amps, watts or ohms', log: 'Log', model: 'Motor model' },
  option: 'Option',
  known: (known, of) => `${known} of ${of} legs`,
  counts: 'counts',
  count: 'Let it count',
  countLabel: (way) => `Let ${way} count`,
  minutes: 'Run',
  average: 'Average',
  peak: 'Peak',
  round:
    'Average and peak of one round from full, accessories off. Scaling looks only at the legs known both ways.',
  scale: 'Scale the model to it',
  scaleLabel: (way) => `Scale the model to ${way}`,
  scaled: (percent) => `Road resistance is now ${percent} of the table`,
  scaledFrom: (way, outing) => `${way}, outing "${outing}"`,
  scaledToCruise: (speed, surface) => `even drive at ${speed}, ${surface}`,
  provenance: (source, read, model, before, after) =>
    `Scaled to a reading (${source}): ${read} read against ${model} of the model; ${before} became ${after}.`,
  takeBack: 'Take the scaling back',
  fails: {
    'not-computable': 'The model cannot be computed yet.',
    'nothing-shared': 'No leg is known both ways.',
    'out-of-range': 'No plausible road resistance explains this average.',
  },
  working: 'Working it out',
  alsoKnown: (kinds) => `Also known as: ${kinds}`,
});
