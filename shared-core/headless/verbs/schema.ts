import { fieldReference } from '../../plan/field-reference.ts';
import { planJsonSchemaText } from '../../plan/json-schema.ts';
import { done, jsonOption, type Verb } from '../verb.ts';

export const schemaVerb: Verb = {
  name: 'schema',
  usage: '[options]',
  summary: 'print the JSON Schema of plan files, or the page of fields',
  details: [
    'x-unit is the unit of a number; null stands for "not known" where the schema allows it.',
  ],
  options: [
    jsonOption,
    { name: '--fields', meaning: 'print the page of fields (Markdown) instead' },
  ],
  arguments: [0, 0],
  run({ has, host }) {
    host.out(has('--fields') && !has('--json') ? fieldReference() : planJsonSchemaText());
    return Promise.resolve(done);
  },
};
