import {
  applyFit,
  applyMapText,
  chooseRuns,
  createLogReader,
  fitBlock,
  guessMapping,
  leaveOneOut,
  planFitRequest,
  plainMapping,
  remarkText,
  type LoggedRun,
} from '../../bench/index.ts';
import { writePlan } from '../../plan/write-plan.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { fitRecordJson, fitText } from '../fit-report.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan, readTextFile, writeTextFile } from '../load-plan.ts';
import { done, forceOption, jsonOption, refuse, type Verb, type VerbCall } from '../verb.ts';

const sampleLength = 65_536;
const noTable = {
  field: 'file',
  problem: 'is no table',
  remedy: 'export the log as text with one row per reading',
};

export const fitVerb: Verb = {
  name: 'fit',
  usage: 'FILE --log CSV [--log CSV ...] [options]',
  summary: 'fit a block of the plan to logged discharges and write the fitted plan',
  details: [
    'The columns of each log are guessed from header and values and told on standard error; --map changes them:',
    '  --map time=elapsed:min,current=I_batt:charge-positive,voltage=U_pack,units=cell1+cell2,temperature=T,run=rate',
    'Every run is taken to begin full. With two or more runs each is also predicted from the others.',
  ],
  options: [
    {
      name: '--log',
      value: 'CSV',
      meaning: 'log to fit; may be given more than once',
      repeats: true,
    },
    {
      name: '--run',
      value: 'NAME',
      meaning: 'only this run of the logs; may be given more than once',
      repeats: true,
    },
    {
      name: '--map',
      value: 'ROLE=COLUMN,...',
      meaning: 'how columns are read, where the guess is wrong',
      repeats: true,
    },
    {
      name: '--option',
      value: 'ID',
      meaning: 'option whose block was measured; else the one that suits the log',
    },
    {
      name: '--temperature',
      value: 'C',
      meaning: 'block temperature at the start, where none was logged [°C]',
    },
    { name: '--date', value: 'YYYY-MM-DD', meaning: 'date of the test, for the record' },
    { name: '--out', value: 'FILE', meaning: 'write the plan with the fitted values' },
    forceOption,
    jsonOption,
  ],
  arguments: [1, 1],
  async run(call) {
    const { positional, value, values, has, host } = call;
    const loaded = await loadPlan(host, positional[0]!);
    if (!loaded.ok) return refuse(loaded.line);
    const { plan } = loaded;
    const logs = values('--log');
    if (logs.length === 0)
      return refuse('--log: name the log to fit, for example --log discharge.csv.');
    const date = value('--date') ?? host.today?.() ?? '1970-01-01';
    if (!/^\d{4}-\d{2}-\d{2}$/.test(date))
      return refuse(`--date: ${date} is no date. Write for example --date 2026-05-31.`);
    const temperature = value('--temperature');
    const temperatureC = temperature === undefined ? null : Number(temperature);
    if (temperatureC !== null && !(temperatureC >= -30 && temperatureC <= 60))
      return refuse(
        `--temperature: ${temperature} is no temperature from -30 to 60 °C. Write for example --temperature 20.`,
      );
    const read = await readLogs(call, plan, logs);
    if (!read.ok) return refuse(read.line);
    const chosen = chooseRuns(read.runs, values('--run'));
    if (!chosen.ok) return refuse(lineOf(chosen.problem));
    const names = logs.map(fileName);
    const source =
      `fitted from ${names.join(', ')} (${chosen.value.map((run) => run.name).join(', ')}) on ${date}`.slice(
        0,
        300,
      );
    const request = planFitRequest(plan, chosen.value, {
      optionId: value('--option') ?? null,
      temperatureC,
      source,
    });
    if (!request.ok) return refuse(lineOf(request.problem));
    const outcome = fitBlock(request.value.request);
    if (!outcome.ok) return refuse(lineOf(outcome));
    const tests = leaveOneOut(request.value.request);
    const { option } = request.value;
    const { layout } = request.value.request;
    const fitted = applyFit(plan, {
      optionId: option.id,
      fit: outcome.fit,
      layout,
      date,
      logs: names,
    });
    const path = value('--out');
    if (path !== undefined) {
      const trouble = await writeTextFile(host, path, writePlan(fitted), has('--force'));
      if (trouble !== null) return refuse(trouble);
    }
    if (has('--json')) host.out(jsonText(fitRecordJson(option, outcome.fit, tests)));
    else {
      host.out(fitText(option, outcome.fit, tests, remarkText));
      host.out(
        path === undefined
          ? '\nNothing was written: add --out FILE to keep the fitted plan.\n'
          : `\nWritten: ${path}\n`,
      );
    }
    return done;
  },
};

type ReadLogs =
  | { readonly ok: true; readonly runs: readonly LoggedRun[] }
  | { readonly ok: false; readonly line: string };

/** Reads every log with its own guessed mapping; what was guessed and left out goes to standard error. */
async function readLogs(
  { host, values }: VerbCall,
  plan: Plan,
  paths: readonly string[],
): Promise<ReadLogs> {
  const runs: LoggedRun[] = [];
  const { block, seriesCount } = plan.options[0]!.pack;
  const nominalPerCellV = { agm: 2, gel: 2, flooded: 2, lfp: 3.2, nmc: 3.65 }[block.chemistry];
  for (const path of paths) {
    const text = await readTextFile(host, path);
    if (!text.ok) return text;
    const guess = guessMapping(text.text.slice(0, sampleLength), {
      nominalVoltageV: nominalPerCellV * block.cellGroups * seriesCount,
    });
    const maps = values('--map');
    // A guess that lacks a column may still be completed by --map.
    const start = guess.ok
      ? guess.value.mapping
      : maps.length > 0
        ? plainMapping(text.text.slice(0, sampleLength))
        : null;
    if (start === null)
      return { ok: false, line: `${path}: ${lineOf(guess.ok ? noTable : guess.problem)}` };
    const mapping = applyMapText(start, maps.join(','));
    if (!mapping.ok) return { ok: false, line: lineOf(mapping.problem) };
    if (guess.ok && maps.length === 0)
      for (const doubt of guess.value.doubts) host.err(`${path}: ${doubt}\n`);
    const reader = createLogReader(mapping.value);
    for (let from = 0; from < text.text.length; from += 1 << 20)
      reader.push(text.text.slice(from, from + (1 << 20)));
    const log = reader.finish();
    for (const [reason, count] of log.dropped)
      host.err(`${path}: ${count} of ${log.rowsRead} rows left out: ${reason}\n`);
    for (const run of log.runs) {
      if (run.sortedRows > 0)
        host.err(`${path}: run ${run.name}: ${run.sortedRows} rows out of order were sorted in\n`);
      if (run.gaps.count > 0)
        host.err(
          `${path}: run ${run.name}: ${run.gaps.count} gaps, the longest ${Math.round(run.gaps.longestS)} s\n`,
        );
    }
    runs.push(
      ...log.runs.map((run) =>
        paths.length > 1 && log.runs.length === 1
          ? { ...run, name: `${fileName(path)} / ${run.name}` }
          : run,
      ),
    );
  }
  return { ok: true, runs };
}

function fileName(path: string): string {
  return path.split(/[\\/]/).at(-1) ?? path;
}

function lineOf(problem: {
  readonly field: string;
  readonly problem: string;
  readonly remedy: string;
}): string {
  const remedy = problem.remedy.charAt(0).toUpperCase() + problem.remedy.slice(1);
  return `${problem.field}: ${problem.problem}. ${remedy}.`;
}
