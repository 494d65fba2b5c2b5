import {
  applyFit,
  chooseRuns,
  fitBlock,
  leaveOneOut,
  planFitRequest,
  remarkText,
} from '../../bench/index.ts';
import { writePlan } from '../../plan/write-plan.ts';
import { fileName, readLogs } from '../fit-logs.ts';
import { fitRecordJson, fitText } from '../fit-report.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan, writeTextFile } from '../load-plan.ts';
import { problemWords } from '../problem-words.ts';
import { done, forceOption, jsonOption, refuse, type Verb } from '../verb.ts';

export const fitVerb: Verb = {
  name: 'fit',
  usage: 'FILE --log CSV [--log CSV ...] [options]',
  summary: 'fit a block of the plan to logged discharges and write the fitted plan',
  details: [
    'The columns of each log are guessed from header and values and told on standard error; --map changes them:',
    '  --map time=elapsed:min,current=I_batt:charge-positive,voltage=U_pack,units=cell1+cell2,temperature=T,speed=v:x3.6,run=rate',
    'A time takes s, ms, min, h, days, h:m:s, iso, day-first or month-first after the colon, a quantity a factor such as x0.001;',
    'columns are named by header or counted from 1, and none drops a role.',
    'A run is taken to begin full unless its first volts speak against it; --start says it. With two or more runs each is',
    'also predicted from the others. The fitted plan then predicts: run fitted.wain --current 5 --to 21',
    'Example: fit cart.wain --log test.csv --map time=Elapsed:min,current=Amps,voltage=Volts --out fitted.wain',
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
    {
      name: '--start',
      value: 'PERCENT',
      meaning: 'charge at which the runs began [%]; else by their first volts',
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
    const start = value('--start');
    const startPercent = start === undefined ? null : Number(start);
    if (startPercent !== null && !(startPercent >= 20 && startPercent <= 100))
      return refuse(
        `--start: ${start} is no charge from 20 to 100 %. Write for example --start 80.`,
      );
    const read = await readLogs(call, plan, logs);
    if (!read.ok) return refuse(read.line);
    const chosen = chooseRuns(read.runs, values('--run'));
    if (!chosen.ok) return refuse(problemWords(chosen.problem));
    const names = logs.map(fileName);
    const source =
      `fitted from ${names.join(', ')} (${chosen.value.map((run) => run.name).join(', ')}) on ${date}`.slice(
        0,
        300,
      );
    const request = planFitRequest(plan, chosen.value, {
      optionId: value('--option') ?? null,
      temperatureC,
      startPercent,
      source,
    });
    if (!request.ok) return refuse(problemWords(request.problem));
    const outcome = fitBlock(request.value.request);
    if (!outcome.ok) return refuse(problemWords(outcome));
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
