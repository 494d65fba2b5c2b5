import type { Load } from '../plan/schema/load.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { plainDischarge } from '../run/plain-discharge.ts';
import { formatFixed } from '../units/index.ts';
import { alignedTable } from './aligned-table.ts';
import { findOptions } from './find-outing.ts';
import { jsonText } from './json-text.ts';
import { writeTextFile } from './load-plan.ts';
import { resultRecord } from './run-record.ts';
import { eventWords } from './run-table.ts';
import { seriesText } from './series-text.ts';
import { done, refuse, type VerbCall, type VerbOutcome } from './verb.ts';

/** Ranges of the plain discharge, as in the plan. */
const limits = {
  '--current': { unit: 'A', above: 0, max: 2000 },
  '--power': { unit: 'W', above: 0, max: 50_000 },
  '--resistance': { unit: 'Ω', above: 0, max: 100_000 },
  '--to': { unit: 'V', above: 0, max: 400 },
  '--temperature': { unit: '°C', above: -30.001, max: 60 },
} as const;
type LimitName = keyof typeof limits;

/** Longest plain discharge that is followed [h]. */
const longestH = 400;

/** Discharges the options asked for with one steady load: `run FILE --current A --to V` and its kin. */
export async function plainRun(plan: Plan, call: VerbCall): Promise<VerbOutcome> {
  const { value, has, host } = call;
  const kinds = (['--current', '--power', '--resistance'] as const).filter(has);
  if (kinds.length !== 1)
    return refuse(`${kinds.join(' and ')}: only one load at a time. Leave the others out.`);
  if (has('--outing'))
    return refuse('--outing: a plain discharge has no outing. Leave one of the two out.');
  const numbers: Partial<Record<LimitName, number>> = {};
  for (const name of Object.keys(limits) as LimitName[]) {
    const text = value(name);
    if (text === undefined) continue;
    const { unit, above, max } = limits[name];
    const number = Number(text);
    if (text.trim() === '' || !Number.isFinite(number) || number <= above || number > max) {
      return refuse(
        `${name}: ${text} is no number above ${above} up to ${max} ${unit}. Write for example ${name} ${unit === '°C' ? 20 : 5}.`,
      );
    }
    numbers[name] = number;
  }
  const found = findOptions(plan, value('--option'));
  if (!found.ok) return refuse(found.line);
  const load = loadOf(kinds[0]!, numbers[kinds[0]!] ?? 0);
  const runs = found.options.map((option) => ({
    option,
    run: plainDischarge(option, {
      load,
      toVoltageV: numbers['--to'] ?? null,
      temperatureC: numbers['--temperature'] ?? null,
      longestH,
    }),
  }));
  const path = value('--series');
  if (path !== undefined) {
    const text = seriesText(
      runs.map(({ option, run }) => ({ optionId: option.id, series: run.series, drive: null })),
    );
    const trouble = await writeTextFile(host, path, text, has('--force'));
    if (trouble !== null) return refuse(trouble);
  }
  if (has('--json')) {
    const options = runs.map(({ option, run }) => ({
      id: option.id,
      name: option.name,
      ...resultRecord(run),
    }));
    host.out(
      jsonText({
        plan: plan.name,
        discharge: {
          load,
          toVoltageV: numbers['--to'] ?? null,
          temperatureC: numbers['--temperature'] ?? null,
        },
        options,
      }),
    );
    return done;
  }
  host.out(
    alignedTable(
      ['Option', 'Run min', 'Hours', 'Ended by', 'A·h', 'W·h', 'Left %'],
      runs.map(({ option, run }) => [
        option.name,
        formatFixed(run.runTimeMin, 1, 'en'),
        formatFixed(run.runTimeMin / 60, 3, 'en'),
        eventWords[run.endedBy],
        formatFixed(run.deliveredAh, 2, 'en'),
        formatFixed(run.deliveredWh, 1, 'en'),
        formatFixed(run.remainingPercent, 0, 'en'),
      ]),
    ),
  );
  return done;
}

function loadOf(name: '--current' | '--power' | '--resistance', value: number): Load {
  if (name === '--current') return { kind: 'current', currentA: value };
  return name === '--power'
    ? { kind: 'power', powerW: value }
    : { kind: 'resistance', resistanceOhm: value };
}
