import { describe, expect, test } from 'vitest';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { sheetTables } from '#core/sheet/index.ts';
import type { Sheet, SheetCell, SheetTable } from '#core/sheet/sheet.ts';
import { sheetPartIds } from '#core/sheet/sheet-parts.ts';
import { blockCounts } from '#core/sheet/shopping-lines.ts';
import { joinLines } from '#core/sheet/shopping-wiring.ts';
import { cutLengthMm } from '#core/sheet/wire-ends.ts';
import { sheetOf } from '../../support/sheet-of.ts';

const cart = samplePlan('orchard-cart');

function tableOf(sheet: Sheet, id: string): SheetTable {
  return sheetTables(sheet, sheetPartIds).find((table) => table.id === id)!;
}

const textOf = (cell: SheetCell | undefined): string =>
  cell === undefined ? '' : typeof cell === 'string' ? cell : cell.text;

function column(table: SheetTable, id: string): SheetCell[] {
  const at = table.columns.findIndex((each) => each.id === id);
  return table.rows.map((row) => row[at]!);
}

const values = (table: SheetTable, id: string) =>
  column(table, id).map((cell) => (typeof cell === 'string' ? null : cell.value));

describe('the wire list', () => {
  const table = tableOf(sheetOf(cart), 'wires');
  test('has supply and return of every branch, numbered and coloured apart', () => {
    expect(table.rows).toHaveLength(2 * cart.wiring!.branches.length);
    const numbers = column(table, 'number').map(textOf);
    expect(new Set(numbers).size).toBe(numbers.length);
    const colours = column(table, 'colour').map(textOf);
    for (let at = 0; at < colours.length; at += 2) expect(colours[at]).not.toBe(colours[at + 1]);
  });
  test('says from, to, wire, length, cut length, ends and fuse of the main line', () => {
    const row = table.rows[2]!.map(textOf);
    expect(row).toEqual([
      '2+',
      'Main line',
      'Pack terminals',
      'Main bus',
      '6 mm²',
      '90',
      'red',
      '0.5',
      '590',
      '1',
      'ring lug',
      '40\u202FA',
      'isolator, Pack connector',
      '',
    ]);
  });
  test.each([
    [0.5, 590],
    [1.4, 1530],
    [0, 60],
  ])('cuts a way of %d m at %d mm', (lengthM, expected) => {
    // By hand: 1.05 x length + 60 mm, up to the next 10 mm (common practice, no source).
    expect(cutLengthMm(lengthM)).toBe(expected);
  });
  test('a branch inside a string is made once for each string', () => {
    const twin = tableOf(sheetOf(cart, { optionId: 'agm-two-strings' }), 'wires');
    expect(values(twin, 'count').slice(0, 4)).toEqual([2, 2, 1, 1]);
  });
});

describe('the shopping list', () => {
  const sheet = sheetOf(cart);
  const table = tableOf(sheet, 'shopping');
  const lines = table.rows.map((row) => row.map(textOf));
  test('sums pack and charger to the price on screen', () => {
    const study = studyPlan(cart).options[0]!;
    const pack = lines.findIndex(([item]) => item === 'Battery block');
    const charger = lines.findIndex(([item]) => item === 'Charger');
    const totals = values(table, 'total');
    expect(totals[pack]! + totals[charger]!).toBeCloseTo(study.price!, 9);
  });
  test('gives as foot the sum of the lines with a price', () => {
    const sum = values(table, 'total').reduce((total: number, value) => total + (value ?? 0), 0);
    expect(table.foot!.map(textOf)).toContain(sum.toFixed(2));
  });
  test('buys more wire than is cut, by a tenth and no more than half a metre beyond', () => {
    const wires = tableOf(sheet, 'wires');
    const red = column(wires, 'gauge')
      .map(textOf)
      .flatMap((gauge, at) =>
        gauge === '6 mm²' && textOf(column(wires, 'colour')[at]) === 'red'
          ? [values(wires, 'cut')[at]! * values(wires, 'count')[at]!]
          : [],
      )
      .reduce((total, length) => total + length, 0);
    const line = lines.findIndex(([, spec]) => spec!.startsWith('6 mm²') && spec!.endsWith('red'));
    const bought = 1000 * values(table, 'quantity')[line]!;
    expect(bought).toBeGreaterThanOrEqual(1.1 * red);
    expect(bought).toBeLessThan(1.1 * red + 500);
  });
  test('asks for a fuse and a holder for every fuse of the wiring', () => {
    const count = cart.wiring!.branches.filter(({ fuse }) => fuse !== null).length;
    const quantity = (name: string) =>
      values(table, 'quantity')
        .filter((_, at) => lines[at]![0] === name)
        .reduce((total: number, value) => total + (value ?? 0), 0);
    expect([quantity('Fuse'), quantity('Fuse holder')]).toEqual([count, count]);
  });
  test('lists another type of block that stands in the pack by itself', () => {
    const { pack } = cart.options[0]!;
    const counts = blockCounts({
      ...pack,
      differences: [
        {
          string: 1,
          position: 2,
          capacityPercent: 100,
          resistancePercent: 100,
          startPercent: null,
          restVoltageV: null,
          ageYears: null,
          replacement: { ...pack.block, name: 'Other' },
        },
      ],
    });
    expect(counts.map(({ block, count }) => [block.name, count])).toEqual([
      [pack.block.name, 1],
      ['Other', 1],
    ]);
  });
  test('lines that ask for the same thing become one', () => {
    const line = { item: 'a', specification: 'b', unit: 'm', quantity: 2, priceEach: null };
    expect(
      joinLines([line, line, { ...line, unit: 'pcs' }]).map(({ quantity }) => quantity),
    ).toEqual([4, 2]);
  });
});

describe('what must not be missing', () => {
  const first = /Local codes, makers' instructions and licensed practice come/;
  const cautions = (plan: Plan) =>
    sheetOf(plan).parts.filter(({ id }) => id !== 'question' && id !== 'log');
  test.each(['orchard-cart', 'campsite-tug', 'market-scooter'] as const)(
    'every page of %s puts local codes and licensed practice first',
    (name) => {
      for (const part of cautions(samplePlan(name))) {
        const text = JSON.stringify(part.blocks);
        expect(text, part.id).toMatch(/licensed practice|makers' instructions, local codes/i);
      }
      const care = sheetOf(samplePlan(name)).parts[0]!.blocks.find(({ kind }) => kind === 'care');
      expect(care?.kind === 'care' ? care.items[0] : '').toMatch(first);
    },
  );
  test('a charger that does not fit is never recommended on label, card or handover', () => {
    const scooter = samplePlan('market-scooter');
    const misfit = studyPlan(scooter).options.find(
      ({ chargerMatch }) => chargerMatch?.verdict === 'misfits',
    )!;
    const sheet = sheetOf(scooter, { optionId: misfit.id });
    const textOfPart = (id: string) =>
      JSON.stringify(sheet.parts.find((part) => part.id === id)!.blocks);
    expect(textOfPart('label')).toContain('does not fit this pack: do not charge');
    expect(textOfPart('label')).not.toContain('Charge only with');
    expect(textOfPart('charge-card')).toContain('Do not charge with it');
    expect(textOfPart('handover')).toContain('do not charge before the builder has changed it');
    expect(textOfPart('handover')).not.toContain('Only with this charger');
  });
  test('a plan without wiring, week or charger still gives every part', () => {
    const bare: Plan = {
      ...cart,
      wiring: null,
      week: null,
      options: cart.options.map((option) => ({ ...option, charger: null })),
    };
    const sheet = sheetOf(bare);
    expect(sheet.parts.map(({ id }) => id)).toEqual([...sheetPartIds]);
    expect(JSON.stringify(sheet.parts)).toContain('the program’s proposal');
    expect(JSON.stringify(sheet)).not.toMatch(/NaN|Infinity|undefined/);
  });
  test('the other language leaves no English sentence of the first behind', () => {
    const collect = (sheet: Sheet): Set<string> => {
      const found = new Set<string>();
      JSON.stringify(sheet.parts, (key, value: unknown) => {
        const shown = ['text', 'label', 'lead', 'title', 'caption', 'hint', 'detail', 'big'];
        if (typeof value === 'string' && (shown.includes(key) || /^\d+$/.test(key)))
          found.add(value);
        return value;
      });
      return found;
    };
    const english = collect(sheetOf(cart));
    const german = collect(sheetOf(cart, { language: 'de' }));
    const names = JSON.stringify(cart);
    const same = [...english].filter(
      (text) =>
        german.has(text) &&
        text.split(' ').length > 3 &&
        !names.includes(text) &&
        !/[Ss]ource|IEC|CFR|et al|handbook|common practice|\d/.test(text),
    );
    // Titles and sources of formulas stand in the language of their catalogue.
    const catalogue = new Set(
      tableOf(sheetOf(cart), 'formulas').rows.flatMap((row) => row.map(textOf)),
    );
    expect(same.filter((text) => !catalogue.has(text))).toEqual([]);
  });
});
