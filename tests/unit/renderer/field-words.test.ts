import { expect, test } from 'vitest';
import { fieldsDe } from '#renderer/text/fields-de.ts';
import { schemaWords } from '../../support/schema-words.ts';

test('every title and help of the plan has a German sentence', () => {
  expect(schemaWords().filter((words) => fieldsDe[words] === undefined)).toEqual([]);
});
