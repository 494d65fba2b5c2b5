export {
  evaluateFormula,
  formulaOf,
  formulas,
  formulasBySubject,
  formulaSubjects,
} from './catalogue.ts';
export type { FormulaSubject } from './catalogue.ts';
export type {
  Formula,
  FormulaArguments,
  FormulaFailure,
  FormulaInput,
  FormulaOutput,
  FormulaResult,
  FormulaSource,
  FormulaSourceClass,
  FormulaStep,
  FormulaValue,
} from './formula.ts';
