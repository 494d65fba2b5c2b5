import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { checkPlan } from '#core/plan/read-plan.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import {
  sheetHtml,
  sheetPartIds,
  sheetTables,
  sheetText,
  tableCsv,
  type MarkupNode,
} from '#core/sheet/index.ts';
import { writeMarkup } from '#core/sheet/markup/write-markup.ts';
import { sheetOf } from '../support/sheet-of.ts';

const cart = samplePlan('orchard-cart');

/** Words a user may type, marks of every language of files among them. */
const anyName = fc.oneof(
  fc.string({ minLength: 1, maxLength: 60, unit: 'grapheme' }),
  fc.constantFrom(
    '<b>x</b>',
    '</style><script>',
    '"; }',
    "=HYPERLINK('x')",
    '-'.repeat(100),
    'a,b;c"d',
  ),
);

/** The cart with other counts, other names and figures that are not known. */
const anyPlan: fc.Arbitrary<Plan> = fc
  .record({
    name: anyName,
    series: fc.integer({ min: 1, max: 4 }),
    parallel: fc.integer({ min: 1, max: 3 }),
    known: fc.boolean(),
    hasCharger: fc.boolean(),
    hasWiring: fc.boolean(),
    hasWeek: fc.boolean(),
    hasConverter: fc.boolean(),
    option: fc.nat(2),
  })
  .map((wish) => {
    const option = cart.options[wish.option]!;
    const { block } = option.pack;
    return {
      ...cart,
      machine: {
        ...cart.machine,
        name: wish.name,
        converter: wish.hasConverter ? cart.machine.converter : null,
        accessories: wish.hasConverter ? cart.machine.accessories : [],
      },
      wiring: wish.hasWiring ? cart.wiring : null,
      week: wish.hasWeek ? cart.week : null,
      outings: [{ ...cart.outings[0]!, name: wish.name }],
      options: [
        {
          ...option,
          name: wish.name,
          charger: wish.hasCharger ? option.charger : null,
          pack: {
            ...option.pack,
            seriesCount: wish.series,
            parallelCount: wish.parallel,
            block: wish.known
              ? block
              : { ...block, price: null, massKg: null, lengthMm: null, continuousDischargeA: null },
          },
        },
      ],
    };
  })
  .filter((plan) => checkPlan(plan).ok);

test('any plan gives every part, with no figure that is none, in every format', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const sheet = sheetOf(plan);
      expect(sheet.parts.map(({ id }) => id)).toEqual([...sheetPartIds]);
      expect(JSON.stringify(sheet)).not.toMatch(/NaN|Infinity|undefined|\{\w+\}"/);
      const html = sheetHtml(sheet, sheetPartIds, 'a4');
      expect(html.match(/<(script|b|style)\b/g)).toEqual(['<style']);
      expect(html.match(/<section/g)).toHaveLength(sheetPartIds.length);
      expect(sheetText(sheet, sheetPartIds).length).toBeGreaterThan(2000);
      for (const table of sheetTables(sheet, sheetPartIds)) {
        const { data, errors } = Papa.parse<string[]>(tableCsv(table).trimEnd());
        expect(errors.filter(({ code }) => code !== 'UndetectableDelimiter')).toEqual([]);
        expect(data).toHaveLength(table.rows.length + 1);
      }
    }),
    { numRuns: 20 },
  );
});

// oxlint-disable-next-line no-control-regex -- what no document may hold
const forbidden = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g;

/** Reads markup back by hand: tags with their text, escapes undone. */
function readBack(text: string): string {
  return text
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}

test('any text comes back from markup as it went in, as text and as attribute', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      const node: MarkupNode = { tag: 'p', attributes: { 'aria-label': text }, children: [text] };
      const written = writeMarkup(node);
      const allowed = text.replaceAll(forbidden, '\uFFFD');
      expect(readBack(written)).toBe(allowed);
      expect(written.match(/<[^>]*>/g)).toHaveLength(2);
      const [, attribute] = /aria-label="([^"]*)"/.exec(written)!;
      expect(readBack(attribute!)).toBe(allowed);
    }),
    { numRuns: 500 },
  );
});
