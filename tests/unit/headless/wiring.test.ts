import { describe, expect, test } from 'vitest';
import { samplePlan } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { command } from './memory-host.ts';

const cart = { 'cart.wain': writePlan(samplePlan('orchard-cart')) };

describe('the verb wiring', () => {
  test('prints one JSON document with every branch in every state it can be in', async () => {
    const { code, out, err } = await command(['wiring', 'cart.wain', '--json'], cart);
    expect(code).toBe(0);
    expect(err).toBe('');
    const record = JSON.parse(out) as {
      proposed: boolean;
      options: { id: string; branches: { id: string; states: object; ampacityA: number }[] }[];
      register: { nextTests: unknown[] };
    };
    expect(record.proposed).toBe(false);
    expect(record.options.map((entry) => entry.id)).toEqual([
      'agm-series',
      'lfp-pack',
      'agm-two-strings',
    ]);
    const main = record.options[0]!.branches.find((branch) => branch.id === 'main')!;
    expect(Object.keys(main.states)).toEqual(
      expect.arrayContaining(['rest', 'cruising', 'start', 'stall', 'charge', 'short-circuit']),
    );
    expect(record.register.nextTests.length).toBeGreaterThan(0);
  });

  test('prints a readable table, and a proposal where the plan has no wiring', async () => {
    const bare = { 'bare.wain': writePlan({ ...samplePlan('orchard-cart'), wiring: null }) };
    const { code, out } = await command(['wiring', 'bare.wain', '--option', 'lfp-pack'], bare);
    expect(code).toBe(0);
    expect(out).toContain('this is a proposal');
    expect(out).toContain('Main line');
    expect(out).not.toContain('AGM in series');
  });

  test('writes the diagram as SVG and never over a file without --force', async () => {
    const argv = ['wiring', 'cart.wain', '--diagram', 'cart.svg'];
    const fresh = await command(argv, cart);
    expect(fresh.files.get('cart.svg')).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
    const again = await command(argv, { ...cart, 'cart.svg': 'mine' });
    expect(again.code).toBe(2);
    expect(again.files.get('cart.svg')).toBe('mine');
    expect(again.err).toContain('--force');
  });

  test('names what is wrong with its arguments and exits with 2', async () => {
    for (const argv of [
      ['wiring'],
      ['wiring', 'none.wain'],
      ['wiring', 'cart.wain', '--option', 'no'],
      ['wiring', 'cart.wain', '--outing', 'no'],
      ['wiring', 'cart.wain', '--language', 'fr'],
    ]) {
      const { code, out, err } = await command(argv, cart);
      expect(code, argv.join(' ')).toBe(2);
      expect(out).toBe('');
      expect(err.trim().split('\n')).toHaveLength(1);
    }
  });

  test('a branch that leads to a device that is not there is refused by name', async () => {
    const plan = samplePlan('orchard-cart');
    plan.wiring!.branches[0]!.to = 'nowhere';
    const { code, err } = await command(['wiring', 'x.wain'], { 'x.wain': writePlan(plan) });
    expect(code).toBe(2);
    expect(err).toContain('wiring.branches.0.to');
  });
});
