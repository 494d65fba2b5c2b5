import {
  evaluateFormula,
  formulaOf,
  formulas,
  type Formula,
  type FormulaValue,
} from '../../formulas/index.ts';
import { formatSignificant } from '../../units/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { jsonText } from '../json-text.ts';
import { done, jsonOption, refuse, type Verb } from '../verb.ts';

export const workingVerb: Verb = {
  name: 'working',
  usage: '[ID [NAME=VALUE ...]] [options]',
  summary: 'list the formulas, show one, or evaluate one with its steps and its source',
  details: [
    'Values may carry a unit that converts (12in, 1.5kW); a list is written 20,10,5.',
    'Without values the formula is shown; inputs with a default may be left out.',
  ],
  options: [jsonOption],
  arguments: [0, 60],
  run({ positional: [id, ...pairs], has, host }) {
    const json = has('--json');
    if (id === undefined) {
      host.out(json ? jsonText({ formulas: formulas.map(describe) }) : listOf(formulas));
      return Promise.resolve(done);
    }
    const formula = formulaOf(id);
    if (formula === undefined || formula === null) {
      return Promise.resolve(
        refuse(`${id}: there is no such formula. Write "working" alone for the list.`),
      );
    }
    if (pairs.length === 0 && formula.inputs.some((input) => input.default === null)) {
      host.out(json ? jsonText(describe(formula)) : pageOf(formula));
      return Promise.resolve(done);
    }
    const inputs: Record<string, string> = {};
    for (const pair of pairs) {
      const equals = pair.indexOf('=');
      if (equals < 1)
        return Promise.resolve(
          refuse(
            `${pair}: this is no NAME=VALUE. Write for example ${formula.inputs[0]?.name ?? 'name'}=1.`,
          ),
        );
      const name = pair.slice(0, equals);
      if (Object.hasOwn(inputs, name))
        return Promise.resolve(refuse(`${name}: given twice. Give it once.`));
      inputs[name] = pair.slice(equals + 1);
    }
    const result = evaluateFormula(id, inputs);
    if (!result.ok)
      return Promise.resolve(refuse(`${result.field}: ${result.problem} ${result.remedy}`));
    host.out(
      json
        ? jsonText({
            id: formula.id,
            title: formula.title,
            equation: formula.equation,
            inputs,
            values: result.values,
            outputs: formula.outputs,
            steps: result.steps,
            source: formula.source,
          })
        : valuesOf(formula, result.values, result.steps),
    );
    return Promise.resolve(done);
  },
};

function describe(formula: Formula): Omit<Formula, 'evaluate'> {
  const { evaluate: _evaluate, ...rest } = formula;
  return rest;
}

function listOf(all: readonly Formula[]): string {
  return all
    .map((formula) =>
      [
        `${formula.id}  ${formula.title}`,
        `  takes   ${formula.inputs.map(withUnit).join(', ')}`,
        `  gives   ${formula.outputs.map(withUnit).join(', ')}`,
        `  source  (${formula.source.class}) ${formula.source.citation}`,
        '',
      ].join('\n'),
    )
    .join('\n');
}

function withUnit({ name, unit }: { readonly name: string; readonly unit: string }): string {
  return unit === '' ? name : `${name} [${unit}]`;
}

function pageOf(formula: Formula): string {
  return [
    `${formula.id}: ${formula.title}`,
    formula.equation,
    '',
    alignedTable(
      ['Input', 'Unit', 'Range', 'Default', 'Meaning'],
      formula.inputs.map((input) => [
        input.name,
        input.unit,
        input.range === null
          ? (input.choices ?? []).join(', ')
          : `${input.range.min} to ${input.range.max}`,
        input.default === null ? 'must be given' : String(input.default),
        input.meaning,
      ]),
    ),
    alignedTable(
      ['Output', 'Unit', 'Meaning'],
      formula.outputs.map(({ name, unit, meaning }) => [name, unit, meaning]),
    ),
    `Assumes: ${formula.assumptions}`,
    `Holds: ${formula.validity}`,
    `Source (${formula.source.class}): ${formula.source.citation}`,
    '',
  ].join('\n');
}

function valuesOf(
  formula: Formula,
  values: Readonly<Record<string, FormulaValue>>,
  steps: readonly { readonly label: string; readonly value: number; readonly unit: string }[],
): string {
  const lines = [formula.title, formula.equation, ''];
  if (steps.length > 0) {
    lines.push(
      alignedTable(
        ['Step', 'Value', 'Unit'],
        steps.map(({ label, value, unit }) => [label, shown(value), unit]),
      ),
    );
  }
  lines.push(
    alignedTable(
      ['Result', 'Value', 'Unit', 'Meaning'],
      formula.outputs.map(({ name, unit, meaning }) => [
        name,
        shown(values[name] ?? null),
        unit,
        meaning,
      ]),
    ),
    `Source (${formula.source.class}): ${formula.source.citation}`,
    '',
  );
  return lines.join('\n');
}

function shown(value: FormulaValue): string {
  if (value === null) return '–';
  if (typeof value === 'number') return formatSignificant(value, 6, 'en');
  return typeof value === 'string'
    ? value
    : value.map((entry) => formatSignificant(entry, 6, 'en')).join(', ');
}
