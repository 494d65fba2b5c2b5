import { isSampleName, sampleAbout, sampleNames, samplePlan } from '../../plan/samples/index.ts';
import { writePlan } from '../../plan/write-plan.ts';
import { jsonText } from '../json-text.ts';
import { writeTextFile } from '../load-plan.ts';
import { done, forceOption, jsonOption, refuse, type Verb } from '../verb.ts';

export const sampleVerb: Verb = {
  name: 'sample',
  usage: '[NAME] [options]',
  summary: 'list the sample plans, or print one',
  details: ['The samples are invented; they describe no real product.'],
  options: [
    jsonOption,
    { name: '--out', value: 'FILE', meaning: 'write the plan to a file instead' },
    forceOption,
  ],
  arguments: [0, 1],
  async run({ positional: [name], value, has, host }) {
    if (name === undefined) {
      if (has('--json'))
        host.out(jsonText(sampleNames.map((id) => ({ name: id, about: sampleAbout(id) }))));
      else for (const id of sampleNames) host.out(`${id.padEnd(16)}${sampleAbout(id)}\n`);
      return done;
    }
    if (!isSampleName(name))
      return refuse(`${name}: there is no such sample. Use one of: ${sampleNames.join(', ')}.`);
    const text = writePlan(samplePlan(name));
    const path = value('--out');
    if (path === undefined) {
      host.out(text);
      return done;
    }
    const trouble = await writeTextFile(host, path, text, has('--force'));
    return trouble === null ? done : refuse(trouble);
  },
};
