import { describe, expect, test } from 'vitest';
import { newBlock, newOption, newPack, newPlan } from '#core/plan/defaults.ts';
import { readPlan } from '#core/plan/read-plan.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { command } from './memory-host.ts';

const plan = { ...newPlan('Bench test'), options: [newOption([], newPack(newBlock(), 1))] };

/** A steady discharge of a 20 A·h block: volts fall in a straight line, then fast. Invented. */
function log(name: string, amps: number): string {
  const hours = 20 / amps;
  return Array.from({ length: 301 }, (_, row) => {
    const share = row / 300;
    const volts = 12.7 - share * 1.1 - Math.max(0, share - 0.95) * 20 - amps * 0.03;
    return `${name};${(share * hours).toFixed(5).replace('.', ',')};${volts.toFixed(3).replace('.', ',')};${amps.toFixed(2).replace('.', ',')}`;
  }).join('\n');
}
const csv = `Lauf;Zeit h;U V;I A\n${log('fast', 5)}\n${log('slow', 1)}\n`;
const files = { 'a.wain': writePlan(plan), 'log.csv': csv };

describe('fit', () => {
  test('writes a plan with the fitted block, its source and a record, and leaves the label alone', async () => {
    const {
      code,
      files: after,
      err,
    } = await command(
      ['fit', 'a.wain', '--log', 'log.csv', '--out', 'b.wain', '--date', '2026-02-03'],
      files,
    );
    expect(code, err).toBe(0);
    const read = readPlan(after.get('b.wain')!);
    if (!read.ok) throw new Error(read.problem.problem);
    const { block } = read.plan.options[0]!.pack;
    expect(block.fitted!.source).toBe('fitted from log.csv (fast, slow) on 2026-02-03');
    expect(Math.abs(block.fitted!.capacityAh / 20 - 1)).toBeLessThan(0.08);
    expect(block.capacityAh).toBe(18);
    expect(read.plan.bench!.fits).toHaveLength(1);
    expect(read.plan.bench!.health[0]!.capacityPercent).toBeGreaterThan(100);
  });
  test('the fitted plan, run at a logged current, meets the logged time within 3 %', async () => {
    const { files: after } = await command(
      ['fit', 'a.wain', '--log', 'log.csv', '--out', 'b.wain'],
      files,
    );
    const { out } = await command(
      ['run', 'b.wain', '--current', '5', '--to', '10.9', '--json'],
      Object.fromEntries(after),
    );
    const { options } = JSON.parse(out) as { options: { runTimeMin: number }[] };
    expect(Math.abs(options[0]!.runTimeMin / 240 - 1)).toBeLessThan(0.03);
  });
  test('--json prints values with limits, both runs, and each run predicted from the other', async () => {
    const { out } = await command(['fit', 'a.wain', '--log', 'log.csv', '--json'], files);
    const record = JSON.parse(out) as {
      values: { low: number; value: number; high: number }[];
      runs: unknown[];
      leftOut: unknown[];
    };
    expect([record.runs.length, record.leftOut.length]).toEqual([2, 2]);
    for (const { low, value, high } of record.values)
      expect(low <= value && value <= high).toBe(true);
  });
  test('--run takes one run only, and a name that is not there is refused with those that are', async () => {
    const one = await command(
      ['fit', 'a.wain', '--log', 'log.csv', '--run', 'fast', '--json'],
      files,
    );
    expect((JSON.parse(one.out) as { runs: { run: string }[] }).runs.map((run) => run.run)).toEqual(
      ['fast'],
    );
    const wrong = await command(['fit', 'a.wain', '--log', 'log.csv', '--run', 'quick'], files);
    expect([wrong.code, wrong.err]).toEqual([2, expect.stringContaining('"fast", "slow"')]);
  });
  test.each([
    [['fit', 'a.wain'], '--log'],
    [['fit', 'a.wain', '--log', 'none.csv'], 'no such file'],
    [['fit', 'a.wain', '--log', 'a.wain'], 'a.wain'],
    [['fit', 'a.wain', '--log', 'log.csv', '--map', 'time=nowhere'], 'nowhere'],
    [['fit', 'a.wain', '--log', 'log.csv', '--option', 'zz'], 'zz'],
    [['fit', 'a.wain', '--log', 'log.csv', '--date', 'today'], '--date'],
    [['fit', 'a.wain', '--log', 'log.csv', '--out', 'a.wain'], '--force'],
  ])('%j is refused with one line', async (argv, part) => {
    const { code, err } = await command(argv, files);
    expect(code).toBe(2);
    expect(err).toContain(part);
    expect(err).not.toMatch(/\n\s+at /);
  });
});
