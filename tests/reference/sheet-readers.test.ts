import { spawnSync } from 'node:child_process';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { findBrowser } from '#electron/print/find-browser.ts';
import { printPdf } from '#electron/print/print-pdf.ts';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import {
  buildSheet,
  gatherSheetFacts,
  sheetHtml,
  sheetPartIds,
  sheetTables,
  tableCsv,
} from '#core/sheet/index.ts';
import type { Paper, Sheet, SheetPartId, SheetTable } from '#core/sheet/index.ts';
import { noPopplerReason, readPdf } from '../support/poppler.ts';
import { sheetOf } from '../support/sheet-of.ts';
import { command } from '../unit/headless/memory-host.ts';

const cart = samplePlan('orchard-cart');
const skip = noPopplerReason() ?? ((await findBrowser()) === null ? 'no Chromium was found' : null);
if (skip !== null) console.warn(`skipped: PDF files are not read back, because ${skip}`);

/** Spaces of every width as one. */
const plain = (text: string) => text.replaceAll(/\s+/g, ' ');

async function printed(
  sheet: Sheet,
  paper: Paper = 'a4',
  parts: readonly SheetPartId[] = sheetPartIds,
) {
  const html = sheetHtml(sheet, parts, paper);
  const bytes = await printPdf(html);
  return { html, bytes: bytes!, ...readPdf(bytes!) };
}

describe.skipIf(skip !== null)('the PDF, read by Poppler', () => {
  test.each(sampleNames)('of %s holds every page, every figure and stays small', async (name) => {
    const sheet = sheetOf(samplePlan(name));
    const { pages, bytes, html } = await printed(sheet);
    const text = plain(pages.join(' '));
    for (const { title } of sheet.parts) expect(text).toContain(title);
    for (const outing of sheet.figures.outings) {
      expect(text).toContain(plain(outing.name));
      expect(text).toContain(outing.runTimeMin.toFixed(1));
      expect(text).toContain(outing.minimumBusVoltageV.toFixed(2));
    }
    expect(text).toContain('Local codes');
    expect(bytes.length).toBeLessThan(1_000_000);
    expect(html.length).toBeLessThan(1_000_000);
    pages.forEach((page, index) => {
      expect(plain(page)).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(plain(page)).toContain('2026-02-03');
    });
  });

  test.each([
    ['a4', /595 x 842|594\.9\d x 841\.9\d|595\.\d+ x 841\.\d+/, /841\.\d+ x 59\d/],
    ['letter', /612 x 792/, /792 x 612/],
  ] as const)('on %s has upright pages and pages on their side', async (paper, upright, lying) => {
    const { info } = await printed(sheetOf(cart), paper);
    expect(info).toMatch(upright);
    expect(info).toMatch(lying);
  });

  test('tears no table row: each page has as many beginnings as ends of names over several lines', async () => {
    const sheet = sheetOf(longPlan());
    const { pages } = await printed(sheet, 'a4', ['wires']);
    const count = (text: string, pattern: RegExp) => text.match(pattern)?.length ?? 0;
    expect(pages.length).toBeGreaterThan(3);
    expect(count(pages.join(''), /begin\d+x/g)).toBe(60);
    for (const page of pages) {
      for (let index = 0; index < 30; index += 1)
        expect(count(page, new RegExp(`begin${index}x`, 'g')), `name ${index}`).toBe(
          count(page, new RegExp(`end${index}x`, 'g')),
        );
      // The head of the table stands on every page that has rows.
      if (count(page, /begin\d+x/g) > 0) expect(page).toMatch(/No\. +Branch/);
    }
  });

  test.each([1, 3, 5, 7, 9])('tears no chart, with %d outings above it', async (outings) => {
    const first = cart.outings[0]!;
    const sheet = sheetOf({
      ...cart,
      outings: Array.from({ length: outings }, (_, index) => ({
        ...first,
        id: index === 0 ? first.id : `outing-${index}`,
        name: `Outing ${index}`,
      })),
    });
    const { pages } = await printed(sheet, 'a4', ['build']);
    const page = pages.filter((each) => each.includes('Where the energy goes'));
    expect(page).toHaveLength(1);
    for (const label of ['Motor circuit', 'Accessories', 'Cables', 'Links and fuses'])
      expect(page[0]).toContain(label);
    const voltage = pages.find((each) => each.includes('Bus voltage on the outing'))!;
    expect(voltage).toContain('cutoff 20.5');
    expect(voltage).toContain('minutes');
  });

  test('keeps hostile names as the words they are', async () => {
    const name = `</title><script>alert(1)</script> & "quotes" 'x' {foot} \\"; }`;
    const sheet = sheetOf({ ...cart, machine: { ...cart.machine, name } });
    const { pages, html } = await printed(sheet);
    expect(html).not.toContain('<script');
    expect(plain(pages[0]!)).toContain('</title><script>alert(1)</script> & "quotes"');
    expect(plain(pages[0]!)).toMatch(/Page 1 of \d+/);
  });
});

/** The cart with so many branches that the wire list runs over several pages; each name is used once. */
function longPlan(): Plan {
  const wiring = cart.wiring!;
  const last = wiring.branches.at(-1)!;
  const more = Array.from({ length: 30 }, (_, index) => ({
    ...last,
    id: `more-${index}`,
    name: `begin${index}x ${'middle words '.repeat(10 * (1 + (index % 5)))}end${index}x`,
    to: `end-${index}`,
    fuse: null,
    connector: null,
  }));
  const ends = more.map(({ to }) => ({ ...wiring.devices.at(-1)!, id: to, name: `Port ${to}` }));
  return {
    ...cart,
    wiring: {
      ...wiring,
      branches: [
        ...wiring.branches.slice(0, 2).map((b) => ({ ...b, name: `${b.id}-only` })),
        ...more,
      ],
      devices: [...wiring.devices, ...ends],
    },
  };
}

/** Rows of a CSV file, as Python's own reader takes them apart. */
function readCsv(text: string): string[][] | null {
  const script =
    'import csv, io, json, sys; t = sys.stdin.buffer.read().decode("utf-8"); print(json.dumps(list(csv.reader(io.StringIO(t, newline=""), strict=True))))';
  for (const python of ['python3', '/usr/bin/python3']) {
    const run = spawnSync(python, ['-c', script], { input: text, encoding: 'utf8' });
    if (run.status === 0) return JSON.parse(run.stdout) as string[][];
  }
  console.warn('skipped: CSV files are not read back, because no Python was found');
  return null;
}

function numbersOf(table: SheetTable): (number | null)[] {
  return table.rows.flatMap((row) =>
    row.flatMap((cell) => (typeof cell === 'string' ? [] : [cell.value])),
  );
}

describe('the CSV tables, read by another program', () => {
  const sheet = sheetOf({ ...cart, machine: { ...cart.machine, name: 'a' } });
  const tables = sheetTables(sheet, sheetPartIds).filter(({ rows }) => rows.length > 0);
  test.each(tables.map((table) => [table.id, table] as const))(
    '%s has as many fields in every row as in its head, and its numbers',
    (_, table) => {
      const text = tableCsv(table);
      expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r]/);
      const rows = readCsv(text);
      if (rows === null) return;
      expect(rows).toHaveLength(table.rows.length + 1);
      expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
      const read = rows.slice(1).flat();
      for (const value of numbersOf(table))
        if (value !== null) expect(read).toContain(String(value));
    },
  );
  test('units stand in the heads', () => {
    const outings = tables.find(({ id }) => id === 'outings')!;
    const head = readCsv(tableCsv(outings))?.[0];
    if (head === undefined) return;
    expect(head).toContain('As planned [min]');
    expect(head).toContain('Lowest bus [V]');
  });
  test('names with commas, quotes, line breaks and formulas come back as words', () => {
    const hostile = [`a,"b"`, 'line\nbreak', '=1+1', 'ä·Ω'];
    const wiring = cart.wiring!;
    const plan = {
      ...cart,
      wiring: {
        ...wiring,
        branches: wiring.branches.map((branch, at) => ({
          ...branch,
          name: hostile[at] ?? branch.name,
        })),
      },
    };
    const table = sheetTables(sheetOf(plan), ['wires'])[0]!;
    const rows = readCsv(tableCsv(table));
    if (rows === null) return;
    // A leading quote keeps a spreadsheet from working a formula out.
    expect(
      rows
        .slice(1)
        .map((row) => row[1])
        .filter((_, at) => at % 2 === 0)
        .slice(0, 4),
    ).toEqual([`a,"b"`, 'line\nbreak', `'=1+1`, 'ä·Ω']);
  });
});

test.each(sampleNames)(
  'the sheet of %s, spreads and all, takes under 3 s of the processor',
  (name) => {
    const plan = samplePlan(name);
    const wishes = { language: 'en', units: 'metric', date: '2026-02-03', version: '' } as const;
    const begun = process.cpuUsage();
    const facts = gatherSheetFacts(plan, plan.options[0]!, wishes);
    const html = sheetHtml(buildSheet(facts, wishes), sheetPartIds, 'a4');
    const { user, system } = process.cpuUsage(begun);
    const seconds = (user + system) / 1e6;
    console.log(`${name}: ${seconds.toFixed(2)} s, ${(html.length / 1000).toFixed(0)} kB`);
    expect(facts.outings.every(({ spread }) => spread !== null)).toBe(true);
    // Time of the processor, which other work on the machine does not lengthen as it does the clock's.
    expect(seconds).toBeLessThan(3);
  },
);

describe('the files of the verb, read by others', () => {
  const files = { 'a.wain': writePlan(cart) };
  test('the calendar is read by an iCalendar parser', async () => {
    const {
      code,
      err,
      files: after,
    } = await command(
      ['sheet', 'a.wain', '--out', 'a.ics', '--date', '2026-02-03', '--cases', '0'],
      files,
    );
    expect(code, err).toBe(0);
    const component = new ICAL.Component(ICAL.parse(after.get('a.ics')!) as unknown[]);
    const events = component.getAllSubcomponents('vevent');
    expect(events.length).toBeGreaterThan(0);
    expect(new ICAL.Event(events[0]).summary).toContain('Plug in');
  });
  test('the JSON file carries the figures as numbers', async () => {
    const { files: after } = await command(
      ['sheet', 'a.wain', '--out', 'a.json', '--date', '2026-02-03', '--cases', '0'],
      files,
    );
    const sheet = JSON.parse(after.get('a.json')!) as Sheet;
    expect(sheet.figures.outings[0]!.runTimeMin).toBeGreaterThan(10);
    expect(sheet.date).toBe('2026-02-03');
  });
});
