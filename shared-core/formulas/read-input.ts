import { parseQuantity } from '../units/parse-quantity.ts';
import { formatGauge, parseGauge } from '../units/wire-gauge.ts';
import type { FormulaFailure } from './formula.ts';
import type { InputSpec } from './input-spec.ts';

type Given = number | string | readonly number[] | undefined;
type Read<T> = { readonly ok: true; readonly value: T } | FormulaFailure;

/** Checks one input against its description and turns text into what the formula computes with. */
export function readInput(
  name: string,
  spec: InputSpec,
  given: Given,
): Read<number | string | readonly number[]> {
  if (spec.kind === 'number') {
    if (given === undefined && spec.default !== null) return { ok: true, value: spec.default };
    return readNumber(name, spec, given);
  }
  if (spec.kind === 'gauge') return readGauge(name, spec, given);
  if (spec.kind === 'list') return readList(name, spec, given);
  // A word may look like a number, such as an insulation class.
  const asked = typeof given === 'number' ? String(given) : (given ?? spec.default);
  if (typeof asked === 'string' && spec.choices.includes(asked)) return { ok: true, value: asked };
  return fail(name, problemOf(given), `Give ${name} as one of: ${spec.choices.join(', ')}.`);
}

interface Ranged {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

function readNumber(name: string, spec: Ranged, given: Given): Read<number> {
  const remedy = `Give ${name}${inUnit(spec.unit)} from ${spec.min} to ${spec.max}.`;
  if (typeof given === 'string') {
    const reading = parseQuantity(given, spec.unit);
    if (reading.ok) return inRange(name, spec, reading.value, remedy);
    if (reading.kind === 'question') {
      const [first, second] = reading.readings;
      return fail(
        name,
        `can be read in two ways, ${first?.label} or ${second?.label}`,
        'Write a point before the decimals and nothing between the thousands.',
      );
    }
    return fail(name, problemOf(given), remedy);
  }
  if (typeof given !== 'number') return fail(name, problemOf(given), remedy);
  return inRange(name, spec, given, remedy);
}

function inRange(name: string, spec: Ranged, value: number, remedy: string): Read<number> {
  if (Number.isNaN(value)) return fail(name, 'is not a number', remedy);
  if (value < spec.min) return fail(name, `is ${value}, below the least value ${spec.min}`, remedy);
  if (value > spec.max)
    return fail(name, `is ${value}, above the largest value ${spec.max}`, remedy);
  return { ok: true, value };
}

function readGauge(name: string, spec: Ranged, given: Given): Read<number> {
  const value = typeof given === 'string' ? parseGauge(given) : given;
  if (
    typeof value === 'number' &&
    Number.isInteger(value) &&
    value >= spec.min &&
    value <= spec.max
  ) {
    return { ok: true, value };
  }
  const remedy = `Give ${name} as a wire gauge from ${formatGauge(spec.min)} to ${formatGauge(spec.max)}, such as 12 or 1/0.`;
  return fail(name, problemOf(given), remedy);
}

function readList(name: string, spec: Ranged, given: Given): Read<readonly number[]> {
  const parts: readonly (number | string)[] =
    typeof given === 'string'
      ? given.split(/[,;]/)
      : typeof given === 'number'
        ? [given]
        : (given ?? []);
  if (parts.length === 0) {
    return fail(name, 'is missing', `Give ${name}${inUnit(spec.unit)} as numbers between commas.`);
  }
  const values: number[] = [];
  for (const part of parts) {
    const read = readNumber(name, spec, part);
    if (!read.ok) return read;
    values.push(read.value);
  }
  return { ok: true, value: values };
}

function problemOf(given: Given): string {
  if (given === undefined || given === '') return 'is missing';
  return typeof given === 'string'
    ? `“${given}” is not understood`
    : `is ${String(given)}, which does not fit`;
}

const inUnit = (unit: string): string => (unit === '' || unit === '1' ? '' : ` in ${unit}`);

/** A failure that names the input at fault. `problem` continues the name: `is missing`. */
export function fail(field: string, problem: string, remedy: string): FormulaFailure {
  return { ok: false, field, problem: `${problem}.`, remedy };
}
