import { expect, test } from 'vitest';
import { fieldDocs, fieldRange, resolvePath } from '#core/plan/field-docs.ts';
import { fieldReference } from '#core/plan/field-reference.ts';
import { planJsonSchemaText } from '#core/plan/json-schema.ts';

const folder = new URL('../../../shared-core/plan/', import.meta.url).pathname;

// Mend either with: npx vitest run --config build/vitest.config.ts --project unit tests/unit/plan -u
test('the JSON Schema file says what the schema says', async () => {
  await expect(planJsonSchemaText()).toMatchFileSnapshot(`${folder}plan.schema.json`);
});

test('the page of fields says what the schema says', async () => {
  await expect(fieldReference()).toMatchFileSnapshot(`${folder}PLAN-FIELDS.md`);
});

test('the JSON Schema carries the unit of a field', () => {
  const text = planJsonSchemaText();
  expect(text).toContain('"x-unit": "A·h"');
  expect(text).not.toContain('"help"');
});

test('a field is found by its path with title and unit', () => {
  expect(fieldDocs('options.0.pack.block.capacityAh')).toMatchObject({
    title: 'Rated capacity',
    unit: 'A·h',
  });
  expect(fieldDocs('machine.accessories.*.load.powerW').unit).toBe('W');
  expect(fieldDocs('machine.converter.loss.idleLossW').title).toBe('Idle loss');
});

test('a path that leads nowhere is no field', () => {
  expect(resolvePath('options.first.name')).toBeNull();
  expect(resolvePath('options.0.toString')).toBeNull();
  expect(resolvePath('nothing')).toBeNull();
});

test('the range of a field knows whether its lower end is excluded', () => {
  expect(fieldRange('options.0.pack.block.capacityAh')).toEqual({
    min: 0,
    max: 2000,
    aboveMin: true,
  });
  expect(fieldRange('options.0.pack.seriesCount')).toEqual({ min: 1, max: 40, aboveMin: false });
  expect(fieldRange('options.0.name')).toBeNull();
});
