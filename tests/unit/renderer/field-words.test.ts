import { expect, test } from 'vitest';
import { fields } from '#renderer/text/german/fields.ts';
import { schemaWords } from '../../support/schema-words.ts';

test('every title and help of the plan has a German sentence', () => {
  expect(schemaWords().filter((words) => fields[words] === undefined)).toEqual([]);
});
