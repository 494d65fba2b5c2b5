import { alignedTable } from './aligned-table.ts';
import type { Verb } from './verb.ts';

const start = 'npm run --silent headless --';

/** The help of the whole command. */
export function overallHelp(verbs: readonly Verb[]): string {
  return [
    `Use: ${start} VERB [FILE] [options]`,
    '',
    alignedTable(
      ['Verb', 'What it does'],
      verbs.map((verb) => [verb.name, verb.summary]),
    ),
    `Every verb has --help. FILE is a plan (.wain), or - for standard input.`,
    'Exit codes: 0 done; 2 bad input or usage; 3 from findings when something must be mended first.',
    '',
  ].join('\n');
}

/** The help of one verb. */
export function verbHelp(verb: Verb): string {
  const options = [
    ...verb.options.map((option) => [
      option.value === undefined ? option.name : `${option.name} ${option.value}`,
      option.meaning,
    ]),
    ['--help', 'print this'],
  ];
  return [
    `Use: ${start} ${verb.name} ${verb.usage}`.trimEnd(),
    '',
    verb.summary,
    ...verb.details,
    '',
    alignedTable(['Option', 'Meaning'], options),
  ].join('\n');
}
