import { describe, expect, test } from 'vitest';
import { runHeadless } from '#core/headless/main.ts';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import type { Sheet } from '#core/sheet/index.ts';
import { command } from './memory-host.ts';

const cart = writePlan(samplePlan('orchard-cart'));
const files = { 'a.wain': cart };
const day = ['--date', '2026-02-03', '--cases', '0'];

async function refused(argv: readonly string[]): Promise<string> {
  const { code, out, err } = await command(['sheet', 'a.wain', ...argv], files);
  expect([code, out]).toEqual([2, '']);
  expect(err.trim().split('\n')).toHaveLength(1);
  return err;
}

describe('the verb sheet', () => {
  test('prints the text without a file, with date, mark and the cautions', async () => {
    const { code, out, err } = await command(['sheet', 'a.wain', ...day], files);
    expect([code, err]).toEqual([0, '']);
    for (const word of ['Build sheet', 'Wire list', 'Question block', '2026-02-03', 'Local codes'])
      expect(out).toContain(word);
    expect(out).not.toMatch(/[\u202F\u00A0]|NaN|undefined/);
  });

  test.each(['html', 'csv', 'ics', 'txt', 'json'])(
    'writes .%s, and replaces it only when told',
    async (ending) => {
      const out = `b.${ending}`;
      const first = await command(['sheet', 'a.wain', '--out', out, ...day], files);
      expect(first.code, first.err).toBe(0);
      const again = { ...files, [out]: 'kept' };
      const second = await command(['sheet', 'a.wain', '--out', out, ...day], again);
      expect([second.code, second.files.get(out)]).toEqual([2, 'kept']);
      expect(second.err).toContain('--force');
      const third = await command(['sheet', 'a.wain', '--out', out, '--force', ...day], again);
      expect(third.files.get(out)).toBe(first.files.get(out));
    },
  );

  test('the same plan, day and choices give the same bytes', async () => {
    const made = await Promise.all(
      [1, 2].map(() =>
        command(
          ['sheet', 'a.wain', '--out', 'b.html', '--cases', '20', '--date', '2026-02-03'],
          files,
        ),
      ),
    );
    expect(made[0]!.files.get('b.html')).toBe(made[1]!.files.get('b.html'));
  });

  test('holds the parts asked for and no others', async () => {
    const { out } = await command(
      ['sheet', 'a.wain', '--part', 'wires', '--part', 'label', '--json', ...day],
      files,
    );
    expect((JSON.parse(out) as Sheet).parts.map(({ id }) => id)).toEqual(['wires', 'label']);
  });

  test('writes the table named', async () => {
    const { files: after } = await command(
      ['sheet', 'a.wain', '--out', 'b.csv', '--table', 'shopping', ...day],
      files,
    );
    expect(after.get('b.csv')).toMatch(
      /^Item,What it must be,Quantity,,Price each \[EUR\],Price \[EUR\]\r\n/,
    );
  });

  test('takes option, language, units and paper', async () => {
    const { files: after } = await command(
      [
        'sheet',
        'a.wain',
        '--out',
        'b.html',
        '--option',
        'lfp-pack',
        '--language',
        'de',
        '--units',
        'us',
        '--paper',
        'letter',
        ...day,
      ],
      files,
    );
    const html = after.get('b.html')!;
    expect(html).toContain('<html lang="de">');
    expect(html).toContain('One 24 V 20 A·h LFP with BMS');
    expect(html).toContain('size:letter portrait');
    expect(html).toMatch(/\d\u202Flb</);
    expect(html).toContain('Örtliche Vorschriften');
  });

  test.each([
    [['--option', 'none'], '--option'],
    [['--part', 'cover'], '--part'],
    [['--paper', 'a3'], '--paper'],
    [['--units', 'stone'], '--units'],
    [['--language', 'fr'], '--language'],
    [['--date', 'soon'], '--date', []],
    [['--cases', '3'], '--cases', ['--date', '2026-02-03']],
    [['--out', 'b.doc'], '--out'],
    [['--out', 'b.csv', '--part', 'label'], '--part'],
    [['--out', 'b.csv', '--table', 'none'], '--table'],
  ])(
    'refuses %j with one line that names it',
    async (argv, name, rest: readonly string[] = day) => {
      expect(await refused([...rest, ...argv])).toContain(name);
    },
  );

  test('says what a calendar needs where there is no routine', async () => {
    const plan = samplePlan('orchard-cart');
    const bare = {
      'a.wain': writePlan({ ...plan, options: plan.options.map((o) => ({ ...o, charger: null })) }),
    };
    const { code, err } = await command(['sheet', 'a.wain', '--out', 'b.ics', ...day], bare);
    expect(code).toBe(2);
    expect(err).toContain('charger');
  });

  test('hands the printer one whole HTML file and writes what it gives; without one it says what to do', async () => {
    const printed: string[] = [];
    const written = new Map<string, Uint8Array>();
    let err = '';
    const host = {
      readText: () => Promise.resolve(cart),
      writeText: () => Promise.resolve(),
      writeBytes: (path: string, bytes: Uint8Array) => {
        written.set(path, bytes);
        return Promise.resolve();
      },
      out: () => {},
      err: (text: string) => {
        err += text;
      },
    };
    const argv = ['sheet', 'a.wain', '--out', 'b.pdf', ...day];
    const bytes = Uint8Array.of(37, 80, 68, 70);
    const printPdf = (html: string) => {
      printed.push(html);
      return Promise.resolve(bytes);
    };
    expect(await runHeadless(argv, { ...host, printPdf })).toBe(0);
    expect(written.get('b.pdf')).toBe(bytes);
    expect(printed[0]).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);
    expect(await runHeadless(argv, { ...host, printPdf: () => Promise.resolve(null) })).toBe(2);
    expect(err).toContain('Chromium');
  });

  test.each(sampleNames)('tells for %s the minutes that run tells', async (name) => {
    const own = { 'a.wain': writePlan(samplePlan(name)) };
    const run = await command(['run', 'a.wain', '--json'], own);
    const record = JSON.parse(run.out) as { options: Record<string, unknown>[] };
    for (const option of record.options) {
      const { out } = await command(
        ['sheet', 'a.wain', '--json', '--option', String(option['id']), ...day],
        own,
      );
      const { figures } = JSON.parse(out) as Sheet;
      const outing = figures.outings.find(({ id }) => id === figures.headlineOuting)!;
      for (const key of [
        'runTimeMin',
        'endedBy',
        'minimumBusVoltageV',
        'deliveredWh',
        'remainingPercent',
      ] as const)
        expect(outing[key], key).toBe(option[key]);
      for (const key of [
        'massKg',
        'price',
        'hoursToFull',
        'nominalVoltageV',
        'capacityAh',
        'energyWh',
        'accessoryCostMin',
      ] as const)
        expect(figures[key], key).toBe(option[key]);
    }
  });

  test('tells the low and high that spread tells', async () => {
    const spread = await command(['spread', 'a.wain', '--cases', '50', '--json'], files);
    const [first] = (
      JSON.parse(spread.out) as { options: { runTimeLowMin: number; runTimeHighMin: number }[] }
    ).options;
    const { out } = await command(
      ['sheet', 'a.wain', '--json', '--date', '2026-02-03', '--cases', '50'],
      files,
    );
    const outing = (JSON.parse(out) as Sheet).figures.outings[0]!;
    expect([outing.runTimeLowMin, outing.runTimeHighMin]).toEqual([
      first!.runTimeLowMin,
      first!.runTimeHighMin,
    ]);
  });
});
