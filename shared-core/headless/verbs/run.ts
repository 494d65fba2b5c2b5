import { studyPlan } from '../../study/study-plan.ts';
import { formatDuration, formatFixed } from '../../units/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan, writeTextFile } from '../load-plan.ts';
import { plainRun } from '../plain-run.ts';
import { runRecord } from '../run-record.ts';
import { eventWords, runTable } from '../run-table.ts';
import { seriesText } from '../series-text.ts';
import { done, forceOption, jsonOption, outingOption, refuse, type Verb } from '../verb.ts';

export const runVerb: Verb = {
  name: 'run',
  usage: 'FILE [options]',
  summary: 'run every option on the outing: how long, what ends it, what the accessories cost',
  details: [
    'With --current, --power or --resistance the outing is left aside and each pack is discharged with',
    'that steady load, nothing else connected, as in a capacity test.',
    'In the series, motor current is what the controller draws; a driven outing adds speed, current in the motor',
    'circuit and winding temperature. A cell stays empty where nothing is known: no such block, nothing driven, or',
    'no thermal data of the motor.',
  ],
  options: [
    jsonOption,
    outingOption,
    {
      name: '--series',
      value: 'OUT.csv',
      meaning: 'write the time series of every option, units in the heading',
    },
    forceOption,
    { name: '--option', value: 'ID', meaning: 'only this option (plain discharge)' },
    { name: '--current', value: 'A', meaning: 'plain discharge at this current [A]' },
    { name: '--power', value: 'W', meaning: 'plain discharge at this power [W]' },
    { name: '--resistance', value: 'OHM', meaning: 'plain discharge through this resistor [Ω]' },
    {
      name: '--to',
      value: 'V',
      meaning:
        'end of the plain discharge at this pack voltage [V]; without it BMS or emptiness ends it',
    },
    {
      name: '--temperature',
      value: 'C',
      meaning: 'temperature of the plain discharge [°C]; 25, or that of a fit',
    },
  ],
  arguments: [1, 1],
  async run(call) {
    const { positional, value, has, host } = call;
    const loaded = await loadPlan(host, positional[0]!);
    if (!loaded.ok) return refuse(loaded.line);
    const { plan } = loaded;
    if (['--current', '--power', '--resistance'].some(has)) return plainRun(plan, call);
    const lone = ['--to', '--temperature', '--option'].find(has);
    if (lone !== undefined)
      return refuse(`${lone}: only for a plain discharge. Add --current, --power or --resistance.`);
    const found = findOuting(plan, value('--outing'));
    if (!found.ok) return refuse(found.line);
    const { outing } = found;
    const study = studyPlan(plan, outing.id);
    const path = value('--series');
    if (path !== undefined) {
      const text = seriesText(
        study.options.map(({ id, run }) => ({
          optionId: id,
          series: run.series,
          drive: run.drive,
        })),
      );
      const trouble = await writeTextFile(host, path, text, has('--force'));
      if (trouble !== null) return refuse(trouble);
    }
    if (has('--json')) {
      host.out(jsonText(runRecord(plan, outing, study)));
      return done;
    }
    host.out(
      `${plan.name}${plan.invented ? ' (invented data)' : ''}: outing "${outing.name}" at ${outing.ambientC} °C, wanted ${formatDuration(outing.goalMin, 'en')}\n\n`,
    );
    host.out(`${runTable(study.options)}\n`);
    host.out(
      alignedTable(
        ['Option', 'At min', 'Event', 'Bus V'],
        study.options.flatMap(({ name, run }) =>
          run.events.map((event) => [
            name,
            formatFixed(event.timeMin, 1, 'en'),
            eventWords[event.kind],
            formatFixed(event.busVoltageV, 2, 'en'),
          ]),
        ),
      ),
    );
    return done;
  },
};
