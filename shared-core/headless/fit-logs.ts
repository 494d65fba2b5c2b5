import {
  applyMapText,
  createLogReader,
  doubtText,
  guessMapping,
  plainMapping,
  type LogMapping,
  type LoggedRun,
  type LogReader,
  type ReadLog,
} from '../bench/index.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { readTextPieces } from './load-plan.ts';
import { problemWords } from './problem-words.ts';
import type { VerbCall } from './verb.ts';

/** Text from the begin of a log that the columns are guessed from. */
const sampleLength = 65_536;

export type ReadLogs =
  | { readonly ok: true; readonly runs: readonly LoggedRun[] }
  | { readonly ok: false; readonly line: string };

/** Reads every log with its own guessed mapping; what was guessed and left out goes to standard error. */
export async function readLogs(
  call: VerbCall,
  plan: Plan,
  paths: readonly string[],
): Promise<ReadLogs> {
  const { host } = call;
  const runs: LoggedRun[] = [];
  for (const path of paths) {
    const log = await readLog(call, plan, path);
    if (!log.ok) return log;
    tellLeftOut(path, log.log, (line) => host.err(line));
    runs.push(
      ...log.log.runs.map((run) =>
        paths.length > 1 && log.log.runs.length === 1
          ? { ...run, name: `${fileName(path)} / ${run.name}` }
          : run,
      ),
    );
  }
  return { ok: true, runs };
}

/** The begin of the file is held back until it is long enough to guess from; the rest flows through the reader. */
async function readLog(
  call: VerbCall,
  plan: Plan,
  path: string,
): Promise<{ ok: true; log: ReadLog } | { ok: false; line: string }> {
  let held = '';
  let reader: LogReader | null = null;
  let refused: string | null = null;
  const begin = (): void => {
    const mapping = mappingOf(call, plan, path, held.slice(0, sampleLength));
    if (!mapping.ok) {
      refused = mapping.line;
      return;
    }
    reader = createLogReader(mapping.mapping);
    reader.push(held);
    held = '';
  };
  const trouble = await readTextPieces(call.host, path, (piece) => {
    if (refused !== null) return;
    if (reader !== null) return reader.push(piece);
    held += piece;
    if (held.length >= sampleLength) begin();
  });
  if (trouble !== null) return { ok: false, line: trouble };
  if (reader === null && refused === null) begin();
  const line: string | null = refused;
  if (line !== null) return { ok: false, line };
  return { ok: true, log: reader!.finish() };
}

function mappingOf(
  { host, values }: VerbCall,
  plan: Plan,
  path: string,
  sample: string,
): { ok: true; mapping: LogMapping } | { ok: false; line: string } {
  const { block, seriesCount } = plan.options[0]!.pack;
  const nominalPerCellV = { agm: 2, gel: 2, flooded: 2, lfp: 3.2, nmc: 3.65 }[block.chemistry];
  const guess = guessMapping(sample, {
    nominalVoltageV: nominalPerCellV * block.cellGroups * seriesCount,
  });
  const maps = values('--map');
  // A guess that lacks a column may still be completed by --map.
  const start = guess.ok ? guess.value.mapping : maps.length > 0 ? plainMapping(sample) : null;
  if (start === null)
    return {
      ok: false,
      line: `${path}: ${problemWords(guess.ok ? noTable : guess.problem)}`,
    };
  const mapping = applyMapText(start, maps.join(','));
  if (!mapping.ok) return { ok: false, line: problemWords(mapping.problem) };
  if (guess.ok && maps.length === 0)
    for (const doubt of guess.value.doubts) host.err(`${path}: ${doubtText(doubt, 'en')}\n`);
  return { ok: true, mapping: mapping.value };
}

const noTable = {
  field: 'file',
  problem: 'is no table',
  remedy: 'export the log as text with one row per reading',
};

function tellLeftOut(path: string, log: ReadLog, tell: (line: string) => void): void {
  for (const [reason, count] of log.dropped)
    tell(`${path}: ${count} of ${log.rowsRead} rows left out: ${reason}\n`);
  for (const run of log.runs) {
    if (run.sortedRows > 0)
      tell(`${path}: run ${run.name}: ${run.sortedRows} rows out of order were sorted in\n`);
    if (run.gaps.count > 0)
      tell(
        `${path}: run ${run.name}: ${run.gaps.count} gaps, the longest ${Math.round(run.gaps.longestS)} s\n`,
      );
  }
}

export function fileName(path: string): string {
  return path.split(/[\\/]/).at(-1) ?? path;
}
