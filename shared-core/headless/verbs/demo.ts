import { sampleAbout, samplePlan } from '../../plan/samples/index.ts';
import { studyPlan } from '../../study/study-plan.ts';
import { formatDuration } from '../../units/index.ts';
import { jsonText } from '../json-text.ts';
import { runRecord } from '../run-record.ts';
import { runTable } from '../run-table.ts';
import { done, jsonOption, type Verb } from '../verb.ts';
import { joinFindings } from '../../findings/join-findings.ts';
import { countsOf } from './findings.ts';

export const demoVerb: Verb = {
  name: 'demo',
  usage: '[options]',
  summary: 'print the main result of the sample orchard-cart',
  details: [
    'Which pack lasts, what ends each run, what the lights and the radio cost, does each charger fit. Invented data.',
  ],
  options: [jsonOption],
  arguments: [0, 0],
  run({ has, host }) {
    const plan = samplePlan('orchard-cart');
    const study = studyPlan(plan);
    const outing = plan.outings.find((entry) => entry.id === study.outingId) ?? plan.outings[0]!;
    if (has('--json')) {
      host.out(jsonText(runRecord(plan, outing, study)));
      return Promise.resolve(done);
    }
    const longest = study.options.toSorted((a, b) => b.run.runTimeMin - a.run.runTimeMin)[0]!;
    const { stop, warn, note } = countsOf(
      joinFindings(study.findings).map(({ finding }) => finding),
    );
    host.out(
      [
        `${plan.name} (invented sample): ${sampleAbout('orchard-cart')}`,
        `Outing "${outing.name}" at ${outing.ambientC} °C, wanted ${formatDuration(outing.goalMin, 'en')}`,
        '',
        runTable(study.options),
        `Runs longest: ${longest.name}, ${formatDuration(longest.run.runTimeMin, 'en')}.`,
        `Findings: ${stop} stop, ${warn} warn, ${note} note.`,
        '',
      ].join('\n'),
    );
    return Promise.resolve(done);
  },
};
