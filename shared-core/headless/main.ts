import { overallHelp, verbHelp } from './help.ts';
import type { HeadlessHost } from './host.ts';
import { readArguments } from './read-arguments.ts';
import type { Verb } from './verb.ts';
import { verbs } from './verbs.ts';

export type { HeadlessHost } from './host.ts';

/**
 * Runs one command. Results go to standard output, messages to standard error.
 *
 * @returns exit code: 0 done, 2 bad input or usage, 3 from `findings` when a stop stands, 1 for a fault of the program
 */
export async function runHeadless(
  argv: readonly string[],
  host: HeadlessHost,
  table: readonly Verb[] = verbs,
): Promise<number> {
  const [name, ...rest] = argv;
  if (name === undefined || name === '--help' || name === 'help') {
    (name === undefined ? host.err : host.out)(overallHelp(table));
    return name === undefined ? 2 : 0;
  }
  const verb = table.find((entry) => entry.name === name);
  if (verb === undefined) {
    host.err(
      `${name}: there is no such verb. Use one of: ${table.map((entry) => entry.name).join(', ')}.\n`,
    );
    return 2;
  }
  if (rest.includes('--help')) {
    host.out(verbHelp(verb));
    return 0;
  }
  const reading = readArguments(verb, rest, host);
  if (!reading.ok) {
    host.err(`${reading.line}\n`);
    return 2;
  }
  try {
    const outcome = await verb.run(reading.call);
    if (outcome.exit === 2) host.err(`${outcome.line}\n`);
    return outcome.exit;
  } catch (error) {
    host.err(
      `${verb.name}: a fault of the program: ${error instanceof Error ? error.message : String(error)}\n`,
    );
    return 1;
  }
}
