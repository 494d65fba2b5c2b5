import { evaluateFormula } from '#core/formulas/index.ts';
import type { FormulaArguments, FormulaValue } from '#core/formulas/index.ts';

/** Values of a formula; throws with the failure where it has none, so that a test cannot pass on a failure. */
export function evaluate(
  id: string,
  inputs: FormulaArguments,
): Readonly<Record<string, FormulaValue>> {
  const result = evaluateFormula(id, inputs);
  if (!result.ok) throw new Error(`${id}: ${result.field} ${result.problem} ${result.remedy}`);
  return result.values;
}

/** One numeric value of a formula. */
export function valueOf(id: string, output: string, inputs: FormulaArguments): number {
  const value = evaluate(id, inputs)[output];
  if (typeof value !== 'number') throw new Error(`${id}: ${output} is ${String(value)}`);
  return value;
}
