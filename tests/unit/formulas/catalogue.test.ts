import { describe, expect, it } from 'vitest';
import { evaluateFormula, formulaOf, formulas } from '#core/formulas/index.ts';
import type { Formula, FormulaArguments, FormulaInput } from '#core/formulas/index.ts';

const middle = (input: FormulaInput): number | string => {
  if (input.default !== null) return input.default;
  if (input.choices !== null) return input.choices[0] ?? '';
  const { min, max } = input.range ?? { min: 0, max: 0 };
  if (input.kind === 'gauge') return 12;
  return min > 0 ? Math.sqrt(min * max) : (min + max) / 2;
};

const argumentsWith = (formula: Formula, value: (input: FormulaInput) => number | string) => {
  const given: Record<string, number | string | number[]> = {};
  for (const input of formula.inputs) {
    given[input.name] = input.kind === 'list' ? [20, 10, 5, 1] : value(input);
  }
  return given satisfies FormulaArguments;
};

/** Every number in a result. */
const numbersOf = (result: ReturnType<Formula['evaluate']>): number[] =>
  result.ok
    ? [
        ...Object.values(result.values).flatMap((value) => (value === null ? [] : value)),
        ...result.steps.map((step) => step.value),
      ].filter((value) => typeof value === 'number')
    : [];

describe('formula catalogue', () => {
  it('names every formula once, in small letters with hyphens', () => {
    const ids = formulas.map((formula) => formula.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
    expect(ids.length).toBeGreaterThanOrEqual(50);
  });
  for (const formula of formulas) {
    describe(formula.id, () => {
      it('states equation, assumptions, validity, source, and a meaning for every input and output', () => {
        const texts = [
          formula.title,
          formula.equation,
          formula.assumptions,
          formula.validity,
          formula.source.citation,
        ];
        for (const text of texts) expect(text.trim()).not.toBe('');
        for (const each of [...formula.inputs, ...formula.outputs])
          expect(each.meaning.trim()).not.toBe('');
        for (const { kind, range, choices } of formula.inputs) {
          expect(
            kind === 'word' ? choices?.length : (range?.max ?? 0) - (range?.min ?? 0),
          ).toBeGreaterThan(0);
        }
      });
      it('answers with its outputs or a typed failure, and never with NaN or infinity, at ends and middle of every range', () => {
        const places: ((input: FormulaInput) => number | string)[] = [
          middle,
          (input) => input.range?.min ?? middle(input),
          (input) => input.range?.max ?? middle(input),
        ];
        for (const varied of formula.inputs) {
          for (const place of places) {
            places.push((input) => (input.name === varied.name ? place(input) : middle(input)));
            if (places.length > 40) break;
          }
        }
        for (const place of places) {
          const result = formula.evaluate(argumentsWith(formula, place));
          if (result.ok) {
            expect(Object.keys(result.values).toSorted()).toEqual(
              formula.outputs.map((output) => output.name).toSorted(),
            );
            expect(numbersOf(result).every(Number.isFinite)).toBe(true);
          } else {
            const names = [...formula.inputs, ...formula.outputs].map((each) => each.name);
            expect(names).toContain(result.field);
            expect(result.remedy).not.toBe('');
          }
        }
      });
      it('names the input that is missing, out of range, not a number, or unknown', () => {
        for (const input of formula.inputs) {
          const good = argumentsWith(formula, middle);
          for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, 'nonsense', '', -1e300]) {
            expect(formula.evaluate({ ...good, [input.name]: bad })).toMatchObject({
              ok: false,
              field: input.name,
            });
          }
          const { [input.name]: _left, ...without } = good;
          const result = formula.evaluate(without);
          if (input.default === null)
            expect(result).toMatchObject({ ok: false, field: input.name });
        }
        expect(formula.evaluate({ furlongs: 1 })).toMatchObject({ ok: false, field: 'furlongs' });
        expect(formula.evaluate({ ['__proto__x']: 1, constructor: 2 })).toMatchObject({
          ok: false,
        });
      });
    });
  }
});

describe('evaluateFormula', () => {
  it('takes numbers as text, with their unit or another one that converts', () => {
    const plain = evaluateFormula('peukert-time', {
      capacityAh: 200,
      currentA: 20,
      exponent: 1.25,
    });
    const typed = evaluateFormula('peukert-time', {
      capacityAh: '200 Ah',
      currentA: '20000 mA',
      exponent: '1.25',
    });
    expect(typed).toEqual(plain);
    expect(plain.ok && plain.steps.length).toBeGreaterThan(0);
  });
  it('takes lists between commas and gauges with a slash', () => {
    expect(evaluateFormula('peukert-fit', { hours: '20,1', capacityAh: '12,7.2' }).ok).toBe(true);
    expect(evaluateFormula('ampacity', { gauge: '1/0', insulation: 105 }).ok).toBe(true);
  });
  it('refuses a unit of another kind, an ambiguous number, and says how to mend them', () => {
    const kind = evaluateFormula('peukert-time', {
      capacityAh: '200 V',
      currentA: 20,
      exponent: 1.25,
    });
    expect(kind).toMatchObject({ ok: false, field: 'capacityAh' });
    const twoWays = evaluateFormula('peukert-time', {
      capacityAh: '1,200',
      currentA: 20,
      exponent: 1.25,
    });
    expect(!twoWays.ok && twoWays.problem).toContain('two ways');
  });
  it('names close formulas for an unknown id', () => {
    const result = evaluateFormula('peukert', {});
    expect(!result.ok && result.remedy).toContain('peukert-time');
    expect(formulaOf('peukert')).toBeUndefined();
  });
});
