import { convert } from './convert.ts';
import type { DecimalMark } from './parse-number.ts';
import { parseNumber } from './parse-number.ts';
import type { Unit } from './unit.ts';
import { unitOf, unitTyped } from './unit-table.ts';
import { formatGauge, gaugeAreaMm2, gaugeDiameterMm, parseGauge } from './wire-gauge.ts';

export type QuantityReading =
  | {
      readonly ok: true;
      /** In the unit asked for. */
      readonly value: number;
      /** What was understood, for showing back: `8 mph`, `12 AWG`. */
      readonly understood: string;
    }
  | {
      readonly ok: false;
      readonly kind: 'question';
      readonly problem: string;
      /** The possible readings, in the unit asked for. */
      readonly readings: readonly { readonly label: string; readonly value: number }[];
    }
  | {
      readonly ok: false;
      readonly kind: 'mistake';
      readonly problem: string;
      readonly remedy: string;
    };

interface ParseOptions {
  /** The user's own decimal mark, where known. */
  readonly decimalMark?: DecimalMark;
}

/**
 * Reads what a person typed into a field of a given unit: a bare number is in that unit, a number with another unit of
 * the same kind is converted (`8 mph`, `5 lb`, `70 °F`, `12 in`, `250 mA`, `5 ft 6 in`), a wire gauge becomes its area or
 * diameter.
 *
 * @param text what was typed
 * @param wantedSymbol unit of the field as documented, such as `A·h`; a unit outside the table takes bare numbers only
 */
export function parseQuantity(
  text: string,
  wantedSymbol: string,
  options: ParseOptions = {},
): QuantityReading {
  const trimmed = text.trim();
  if (trimmed === '')
    return mistake('Nothing is typed.', `Type a number in ${named(wantedSymbol)}.`);
  const wanted = unitOf(wantedSymbol);
  const gauge = gaugeReading(trimmed, wanted);
  if (gauge !== null) return gauge;
  const parts = splitNumber(trimmed);
  if (parts === null) {
    return mistake(`“${trimmed}” is not a number.`, `Type a number in ${named(wantedSymbol)}.`);
  }
  const { numberText, unitText } = parts;
  const bare = unitText === '' || unitText === wantedSymbol;
  const unit = bare || wanted === undefined ? wanted : unitTyped(unitText, wanted.kind);
  if (unit === undefined && !bare) {
    return compound(trimmed, wanted, options) ?? wrongUnit(unitText, wantedSymbol);
  }
  const toWanted = (value: number) =>
    wanted === undefined || unit === undefined ? value : convert(value, unit, wanted);
  const symbol = unit?.symbol ?? wantedSymbol;
  const reading = parseNumber(numberText, options.decimalMark);
  if (reading.kind === 'number') {
    return { ok: true, value: toWanted(reading.value), understood: `${reading.value} ${symbol}` };
  }
  if (reading.kind === 'ambiguous') {
    return {
      ok: false,
      kind: 'question',
      problem: `“${numberText}” can be read in two ways.`,
      readings: reading.readings.map((value) => ({
        label: `${value} ${symbol}`,
        value: toWanted(value),
      })),
    };
  }
  return (
    compound(trimmed, wanted, options) ??
    mistake(`“${numberText}” is not a number.`, `Type a number in ${named(wantedSymbol)}.`)
  );
}

/** The longest leading run that can be a number, and the rest. */
function splitNumber(text: string): { numberText: string; unitText: string } | null {
  const match =
    /^([+\-−–]?(?:\d+[ -])?\d+\/\d+|[+\-−–]?[\d.,][\d.,'’\u00A0\u202F ]*(?:e[+-]?\d+)?)\s*(.*)$/i.exec(
      text,
    );
  if (match === null) return null;
  return { numberText: match[1]!.trim(), unitText: match[2]!.trim() };
}

/** A gauge, where an area or a length is asked for and the text names one; a bare `12` in a field of mm² is not a gauge. */
function gaugeReading(text: string, wanted: Unit | undefined): QuantityReading | null {
  if (wanted?.kind !== 'area' && wanted?.kind !== 'length') return null;
  if (!/awg|gauge|ga$|^#|^[1-4]\/0$/i.test(text)) return null;
  const gauge = parseGauge(text);
  if (gauge === null) {
    return mistake(`“${text}” is not a wire gauge.`, 'Type a gauge from 4/0 AWG to 40 AWG.');
  }
  const value =
    wanted.kind === 'area'
      ? convert(gaugeAreaMm2(gauge), unitOf('mm²')!, wanted)
      : convert(gaugeDiameterMm(gauge), unitOf('mm')!, wanted);
  return { ok: true, value, understood: formatGauge(gauge) };
}

/** `5 ft 6 in`, `1 h 30 min`: several numbers, each with a unit of the kind asked for, added. */
function compound(
  text: string,
  wanted: Unit | undefined,
  options: ParseOptions,
): QuantityReading | null {
  if (wanted === undefined || wanted.offset !== 0) return null;
  const parts = [...text.matchAll(/([\d.,]+)\s*([^\d\s.,]+)\s*/g)];
  if (parts.length < 2 || parts.map((part) => part[0]).join('') !== text) return null;
  let total = 0;
  for (const [, numberText = '', unitText = ''] of parts) {
    const unit = unitTyped(unitText, wanted.kind);
    const number = parseNumber(numberText, options.decimalMark);
    if (unit === undefined || number.kind !== 'number') return null;
    total += convert(number.value, unit, wanted);
  }
  return { ok: true, value: total, understood: text };
}

function wrongUnit(unitText: string, wantedSymbol: string): QuantityReading {
  const other = unitTyped(unitText);
  return mistake(
    other === undefined
      ? `“${unitText}” is not a unit that is known here.`
      : `“${unitText}” is a unit of ${other.kind.replaceAll('-', ' ')}, which does not fit here.`,
    `Give the value in ${named(wantedSymbol)}.`,
  );
}

const named = (symbol: string): string => (symbol === '1' ? 'plain figures' : symbol);

const mistake = (problem: string, remedy: string): QuantityReading => ({
  ok: false,
  kind: 'mistake',
  problem,
  remedy,
});
