import { describe, expect, test } from 'vitest';
import { mergeFindings } from '#core/findings/merge-findings.ts';
import { weekFindings } from '#core/findings/week-findings.ts';
import { verbs } from '#core/headless/verbs.ts';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { readPlan } from '#core/plan/read-plan.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { command } from './memory-host.ts';

const cart = writePlan(samplePlan('orchard-cart'));
const scooter = writePlan(samplePlan('market-scooter'));

/** The JSON a command prints; fails when it prints anything else. */
async function json(
  argv: readonly string[],
  files: Record<string, string> = {},
): Promise<Record<string, unknown>> {
  const { out } = await command([...argv, '--json'], files);
  return JSON.parse(out) as Record<string, unknown>;
}

describe('the command as a whole', () => {
  test('help goes to standard output and lists every verb', async () => {
    const { code, out, err } = await command(['--help']);
    expect([code, err]).toEqual([0, '']);
    for (const verb of verbs) expect(out).toContain(verb.name);
  });

  test('nothing typed prints the help as a complaint', async () => {
    const { code, out, err } = await command([]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('VERB');
  });

  test.each(verbs.map((verb) => verb.name))('%s has its own help', async (name) => {
    const { code, out, err } = await command([name, '--help']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain(`-- ${name}`);
  });

  test.each([
    [['frob'], 'frob: there is no such verb.'],
    [['run'], 'run: something is missing.'],
    [['run', 'a', 'b'], 'b: one argument too many.'],
    [['run', 'cart', '--frob'], '--frob: run has no such option.'],
    [['run', 'cart', '--outing'], '--outing: the value is missing.'],
    [['run', 'cart', '--json=yes'], '--json: takes no value.'],
    [['run', 'cart', '--outing', 'x', '--outing', 'y'], '--outing: given twice.'],
    [['run', 'cart', '--outing', 'nowhere'], '--outing: there is no outing nowhere.'],
    [['run', 'cart', '--to', '20'], '--to: only for a plain discharge.'],
    [['run', 'cart', '--current', '0'], '--current: 0 is no number above 0'],
    [['run', 'cart', '--current', 'many'], '--current: many is no number'],
    [['run', 'cart', '--current', '1', '--power', '2'], '--current and --power: only one load'],
    [['run', 'cart', '--current', '1', '--option', 'x'], '--option: there is no option x.'],
    [['run', 'nowhere'], 'nowhere: There is no such file'],
    [['run', 'empty'], 'empty: The file is empty.'],
    [
      ['run', 'bad'],
      'bad: options.0.pack.block.capacityAh: Rated capacity is -5 A·h. Put a number above 0',
    ],
    [['findings', 'bad'], 'bad: options.0.pack.block.capacityAh'],
    [['charge', 'bad'], 'bad: options.0.pack.block.capacityAh'],
    [['findings', 'cart', '--language', 'xx'], '--language: xx is not known.'],
    [['sample', 'frob'], 'frob: there is no such sample.'],
    [['working', 'frob'], 'frob: there is no such formula.'],
    [['working', 'peukert-time', 'capacityAh'], 'capacityAh: this is no NAME=VALUE.'],
    [['working', 'peukert-time', 'capacityAh=-1', 'currentA=1', 'exponent=1.1'], 'capacityAh:'],
    [['working', 'peukert-time', 'frob=1'], 'frob:'],
  ])('%j is refused with code 2 and one line on standard error', async (argv, start) => {
    const bad = cart.replace('"capacityAh": 18', '"capacityAh": -5');
    const { code, out, err } = await command(argv, { cart, empty: '', bad });
    expect([code, out]).toEqual([2, '']);
    expect(err.startsWith(start), err).toBe(true);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(err).not.toMatch(/ at .*:\d+/);
  });
});

describe('sample', () => {
  test('without a name lists the samples, one a line, name first', async () => {
    const { out } = await command(['sample']);
    expect(
      out
        .trimEnd()
        .split('\n')
        .map((line) => line.split(' ')[0]),
    ).toEqual([...sampleNames]);
  });

  test.each(sampleNames)('%s prints a plan that can be read', async (name) => {
    const { code, out } = await command(['sample', name]);
    expect(code).toBe(0);
    expect(readPlan(out)).toMatchObject({ ok: true, plan: samplePlan(name) });
  });

  test('a file that exists is kept unless forced', async () => {
    const kept = await command(['sample', 'orchard-cart', '--out', 'x'], { x: 'mine' });
    expect([kept.code, kept.files.get('x')]).toEqual([2, 'mine']);
    expect(kept.err).toContain('--force');
    const forced = await command(['sample', 'orchard-cart', '--out', 'x', '--force'], {
      x: 'mine',
    });
    expect([forced.code, forced.files.get('x')]).toEqual([0, cart]);
  });
});

describe('run', () => {
  test('prints as JSON the very figures of the study', async () => {
    const { options } = await json(['run', 'cart'], { cart });
    const study = studyPlan(samplePlan('orchard-cart'));
    expect(options).toMatchObject(
      study.options.map(({ id, name, run, accessoryCostMin }) => ({
        id,
        name,
        runTimeMin: run.runTimeMin,
        endedBy: run.endedBy,
        deliveredAh: run.deliveredAh,
        deliveredWh: run.deliveredWh,
        minimumBusVoltageV: run.minimumBusVoltageV,
        accessoryCostMin,
        events: run.events,
      })),
    );
  });

  test('runs another outing when asked', async () => {
    expect(await json(['run', 'cart', '--outing', 'cold-morning'], { cart })).toMatchObject({
      outing: { id: 'cold-morning', ambientC: 2, goalMin: 60 },
    });
  });

  test('reads a plan from standard input', async () => {
    expect((await command(['run', '-'], { '-': cart })).code).toBe(0);
  });

  test('the table holds a row for each option', async () => {
    const { out } = await command(['run', 'cart'], { cart });
    for (const { name } of samplePlan('orchard-cart').options) expect(out).toContain(name);
  });

  test('an outing that draws nothing has no quick figures, and a full pack is charged at once', async () => {
    const plan = samplePlan('orchard-cart');
    plan.machine.accessories = [];
    plan.machine.controller.idleCurrentA = 0;
    plan.machine.converter = null;
    plan.outings = [
      {
        ...plan.outings[0]!,
        longestMin: 30,
        legs: [{ ...plan.outings[0]!.legs[0]!, load: null, otherLoads: [] }],
      },
    ];
    plan.headlineOuting = plan.outings[0]!.id;
    plan.week = null;
    plan.wiring = null;
    const { out, err } = await command(['run', 'plan', '--json'], { plan: writePlan(plan) });
    expect(err).toBe('');
    const { options } = JSON.parse(out) as { options: object[] };
    expect(options[0]).toMatchObject({
      deliveredAh: 0,
      peukertMin: null,
      plainMin: null,
      hoursToFull: 0,
    });
  });

  test('the series has units in its heading and rises in time to the end of each run', async () => {
    const { files, code } = await command(['run', 'cart', '--series', 'out.csv'], { cart });
    expect(code).toBe(0);
    const [head, ...rows] = files.get('out.csv')!.trimEnd().split('\n');
    expect(head).toMatch(
      /^option,time \[s\],pack voltage \[V\],bus voltage \[V\],pack current \[A\]/,
    );
    const study = studyPlan(samplePlan('orchard-cart'));
    for (const { id, run } of study.options) {
      const times = rows
        .filter((row) => row.startsWith(`${id},`))
        .map((row) => Number(row.split(',')[1]));
      expect(times).toEqual(times.toSorted((a, b) => a - b));
      expect(times.at(-1)! / 60).toBeCloseTo(run.runTimeMin, 3);
    }
  });

  test('the series of a driven outing has speed, current and temperature of the motor, that of a pushed one none', async () => {
    const tug = samplePlan('campsite-tug');
    tug.outings[0]!.longestMin = 20;
    const { files } = await command(['run', 'tug', '--series', 'tug.csv'], {
      tug: writePlan(tug),
    });
    const [head, ...rows] = files.get('tug.csv')!.trimEnd().split('\n');
    const titles = head!.split(',');
    const column = (title: string) => {
      const at = titles.indexOf(title);
      expect(at).toBeGreaterThan(0);
      return rows
        .filter((row) => row.startsWith(`${tug.options[0]!.id},`))
        .map((row) => Number(row.split(',')[at]));
    };
    const { drive } = studyPlan(tug).options[0]!.run;
    expect(Math.max(...column('speed [km/h]'))).toBeCloseTo(drive!.topSpeedKmh, 1);
    expect(Math.max(...column('motor winding temperature [°C]'))).toBeCloseTo(
      drive!.motorPeakTemperatureC!,
      0,
    );
    const speed = column('speed [km/h]');
    const time = column('time [s]');
    const metres = speed
      .slice(1)
      .reduce(
        (sum, kmh, index) =>
          sum + ((time[index + 1]! - time[index]!) * (kmh + speed[index]!)) / 7.2,
        0,
      );
    expect(metres / 1000 / drive!.distanceKm).toBeCloseTo(1, 1);
    const cartHead = (await command(['run', 'cart', '--series', 'cart.csv'], { cart })).files
      .get('cart.csv')!
      .split('\n')[0]!;
    expect(cartHead).not.toContain('speed');
  });

  test('a series never replaces a file unless forced', async () => {
    const { code, files } = await command(['run', 'cart', '--series', 'cart'], { cart });
    expect([code, files.get('cart')]).toEqual([2, cart]);
  });

  // Coulomb's count: at constant current the delivered charge is current times time, whatever the model does.
  test('a plain discharge delivers current times time', async () => {
    const { options } = await json(['run', 'cart', '--current', '5', '--to', '21'], { cart });
    for (const option of options as {
      runTimeMin: number;
      deliveredAh: number;
      endedBy: string;
    }[]) {
      expect(option.deliveredAh).toBeCloseTo((5 * option.runTimeMin) / 60, 4);
      expect(option.runTimeMin).toBeGreaterThan(30);
    }
  });

  test('a plain discharge at constant power delivers power times time', async () => {
    const { options } = await json(
      ['run', 'cart', '--power', '100', '--to', '21', '--option', 'lfp-pack'],
      { cart },
    );
    const [option] = options as { runTimeMin: number; deliveredWh: number }[];
    expect(option!.deliveredWh).toBeCloseTo((100 * option!.runTimeMin) / 60, 1);
  });
});

describe('findings', () => {
  test('a plan with a stop gives exit code 3, one without gives 0', async () => {
    expect((await command(['findings', 'plan'], { plan: scooter })).code).toBe(3);
    expect((await command(['findings', 'plan'], { plan: cart })).code).toBe(0);
  });

  test('JSON carries the findings of the study and their counts', async () => {
    const printed = await json(['findings', 'plan'], { plan: scooter });
    const plan = samplePlan('market-scooter');
    const findings = mergeFindings(studyPlan(plan).findings, weekFindings(plan));
    expect(printed['findings']).toEqual(findings);
    expect(printed['counts']).toMatchObject({
      stop: findings.filter(({ status, severity }) => status === 'finding' && severity === 'stop')
        .length,
    });
  });

  test('sentences come in German when asked', async () => {
    const { out } = await command(['findings', 'plan', '--language', 'de'], { plan: scooter });
    expect(out).toContain('der Akku ist LFP');
  });
});

describe('charge', () => {
  test('JSON carries verdict, hours and aspects of each option', async () => {
    const { options } = await json(['charge', 'plan'], { plan: scooter });
    expect(options).toMatchObject([
      { id: 'tired-pair', verdict: 'fits' },
      { id: 'new-pair', verdict: 'fits' },
      { id: 'lfp-old-charger', verdict: 'misfits', hoursToFull: null },
    ]);
  });
});

describe('working', () => {
  test('the list holds identifier, inputs with units, outputs, source and class of every formula', async () => {
    const { formulas } = await json(['working']);
    expect((formulas as unknown[]).length).toBeGreaterThan(30);
    expect(formulas).toContainEqual(
      expect.objectContaining({
        id: 'peukert-time',
        inputs: expect.arrayContaining([
          expect.objectContaining({ name: 'capacityAh', unit: 'A·h' }),
        ]),
        source: expect.objectContaining({ class: 'published' }),
      }),
    );
  });

  // 200 A·h over 20 h, exponent 1.25, 20 A: 8.40896 h (recomputed exactly from Peukert's law with H).
  test('a formula is evaluated with its steps and its source', async () => {
    const { values } = await json([
      'working',
      'peukert-time',
      'capacityAh=200',
      'ratedHours=20',
      'currentA=20',
      'exponent=1.25',
    ]);
    expect((values as { timeH: number }).timeH).toBeCloseTo(8.40896, 5);
    const { out } = await command([
      'working',
      'peukert-time',
      'capacityAh=200',
      'currentA=20',
      'exponent=1.25',
    ]);
    expect(out).toContain('8.40896');
    expect(out).toContain('Source');
  });

  test('a formula without values shows what it takes', async () => {
    const { out, code } = await command(['working', 'peukert-time']);
    expect(code).toBe(0);
    expect(out).toContain('must be given');
  });
});

describe('schema', () => {
  test('prints the JSON Schema, or the page of fields', async () => {
    expect(JSON.parse((await command(['schema'])).out)).toMatchObject({
      title: 'Plan',
      type: 'object',
    });
    expect((await command(['schema', '--fields'])).out.startsWith('# Fields of a plan file')).toBe(
      true,
    );
  });
});

describe('demo', () => {
  test('names every option of the orchard cart with its minutes and says that it is invented', async () => {
    const { out, code } = await command(['demo']);
    expect(code).toBe(0);
    expect(out).toContain('invented');
    for (const { name, run } of studyPlan(samplePlan('orchard-cart')).options) {
      expect(out).toContain(name);
      expect(out).toContain(run.runTimeMin.toFixed(1));
    }
  });
});
