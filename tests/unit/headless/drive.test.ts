import { describe, expect, test } from 'vitest';
import { withLoad } from '#core/drive/load-ways.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { command } from './memory-host.ts';

const tug = () => {
  const plan = samplePlan('campsite-tug');
  plan.outings[0]!.longestMin = 40;
  return plan;
};
const files = { 'tug.wain': writePlan(tug()) };

describe('the verb drive', () => {
  test('prints motor, voltages, stops and ways of every option as one JSON document', async () => {
    const { code, out, err } = await command(['drive', 'tug.wain', '--json'], files);
    expect(code).toBe(0);
    expect(err).toBe('');
    const record = JSON.parse(out) as {
      motor: { points: { stallA: number } };
      options: {
        id: string;
        view: { gears: { topSpeedKmh: number }[]; questions: unknown[] };
        stop: { planned: { creepKmh: number } };
      }[];
      ways: { way: string; runs: { optionId: string; averageA: number }[] }[];
    };
    // 24 V over the 0.12 ohm of the sample's motor.
    expect(record.motor.points.stallA).toBeCloseTo(200, 6);
    expect(record.options.map(({ id }) => id)).toEqual(['lead-24', 'lithium-36']);
    const [lead, lithium] = record.options.map(({ view }) => view.gears[1]!.topSpeedKmh);
    // 42 V against 25.6 V, full: the speed goes with the voltage.
    expect(lithium! / lead!).toBeCloseTo(42 / 25.6, 1);
    expect(record.ways.map(({ way }) => way)).toEqual(['model']);
  });

  test('sets clamp-meter amps kept beside the model against it, in words', async () => {
    const plan = tug();
    plan.outings[0]!.legs = plan.outings[0]!.legs.map((leg) =>
      leg.load === null ? leg : withLoad(withLoad(leg, { kind: 'current', currentA: 9 }), leg.load),
    );
    const { code, out } = await command(['drive', 'tug.wain', '--option', 'lead-24'], {
      'tug.wain': writePlan(plan),
    });
    expect(code).toBe(0);
    expect(out).toMatch(/amps +4 of 4 +24 V lead/);
    expect(out).toMatch(/model +4 of 4 +24 V lead/);
    expect(out).not.toContain('36 V lithium');
  });

  test('asks for what is missing instead of printing a number', async () => {
    const plan = tug();
    plan.machine.drive!.motor.ratedPowerW = null;
    plan.options[0]!.pack.block.massKg = null;
    const { out } = await command(['drive', 'tug.wain', '--option', 'lead-24'], {
      'tug.wain': writePlan(plan),
    });
    expect(out).toContain('not known: machine.drive.motor.ratedPowerW');
    expect(out).toContain('not known: pack.block.massKg');
    expect(out).toMatch(/Slow, motors in series .* \? +\?/);
  });

  test('says so where no drive is described, and refuses a wish that is no number', async () => {
    const cart = { 'cart.wain': writePlan(samplePlan('orchard-cart')) };
    const bare = await command(['drive', 'cart.wain'], cart);
    expect(bare.code).toBe(0);
    expect(bare.out).toContain('no drive described');
    const wrong = await command(['drive', 'tug.wain', '--deceleration', 'fast'], files);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('--deceleration');
  });
});

test('run --json tells what the wheels did without its time course', async () => {
  const { out } = await command(['run', 'tug.wain', '--json'], files);
  const record = JSON.parse(out) as {
    options: { drive: { distanceKm: number; ledger: object; series?: unknown } }[];
  };
  expect(record.options[0]!.drive.distanceKm).toBeGreaterThan(0.5);
  expect(record.options[0]!.drive.ledger).toHaveProperty('rollingWh');
  expect(record.options[0]!.drive.series).toBeUndefined();
  expect(out.length).toBeLessThan(100_000);
});
