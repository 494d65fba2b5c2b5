import type {
  Formula,
  FormulaArguments,
  FormulaFailure,
  FormulaInput,
  FormulaResult,
  FormulaSource,
  FormulaStep,
  FormulaValue,
} from './formula.ts';
import type { InputSpec, ValueOf } from './input-spec.ts';
import { fail, readInput } from './read-input.ts';

type Inputs = Readonly<Record<string, InputSpec>>;
type Outputs = Readonly<Record<string, readonly [unit: string, meaning: string]>>;

/** What a formula computes once its inputs are checked. */
export type Computed<O extends Outputs> =
  | {
      readonly values: { readonly [K in keyof O]: FormulaValue };
      readonly steps?: readonly FormulaStep[];
    }
  | FormulaFailure;

interface Definition<I extends Inputs, O extends Outputs> {
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  readonly inputs: I;
  readonly outputs: O;
  readonly assumptions: string;
  readonly validity: string;
  readonly source: FormulaSource;
  readonly compute: (inputs: { readonly [K in keyof I]: ValueOf<I[K]> }) => Computed<O>;
}

/** Makes a catalogue entry: describes the inputs, and checks them and the results around `compute`. */
export function defineFormula<const I extends Inputs, const O extends Outputs>(
  definition: Definition<I, O>,
): Formula {
  const { inputs, outputs, compute, ...rest } = definition;
  return {
    ...rest,
    inputs: Object.entries(inputs).map(([name, spec]) => describe(name, spec)),
    outputs: Object.entries(outputs).map(([name, [unit, meaning]]) => ({ name, unit, meaning })),
    evaluate: (given) => {
      const read = readInputs(inputs, given);
      if (!read.ok) return read;
      return checkResult(compute(read.values as { readonly [K in keyof I]: ValueOf<I[K]> }));
    },
  };
}

/** A named intermediate value. */
export function step(label: string, value: number, unit: string): FormulaStep {
  return { label, value, unit };
}

function readInputs(
  specs: Inputs,
  given: FormulaArguments,
): { ok: true; values: Record<string, unknown> } | FormulaFailure {
  const unknown = Object.keys(given).find((name) => !Object.hasOwn(specs, name));
  if (unknown !== undefined) {
    const names = Object.keys(specs).join(', ');
    return fail(unknown, 'is not an input of this formula', `Its inputs are: ${names}.`);
  }
  const values: Record<string, unknown> = {};
  for (const [name, spec] of Object.entries(specs)) {
    const read = readInput(name, spec, Object.hasOwn(given, name) ? given[name] : undefined);
    if (!read.ok) return read;
    values[name] = read.value;
  }
  return { ok: true, values };
}

function checkResult(computed: Computed<Outputs>): FormulaResult {
  if ('ok' in computed) return computed;
  for (const [name, value] of Object.entries(computed.values)) {
    const numbers = typeof value === 'number' ? [value] : Array.isArray(value) ? value : [];
    if (!numbers.every(Number.isFinite)) {
      return fail(
        name,
        'has no finite value for these inputs',
        'Move the inputs towards usual values.',
      );
    }
  }
  const steps = (computed.steps ?? []).filter(({ value }) => Number.isFinite(value));
  return { ok: true, values: computed.values, steps };
}

function describe(name: string, spec: InputSpec): FormulaInput {
  const { kind, unit, meaning } = spec;
  return {
    name,
    kind,
    unit,
    meaning,
    range: spec.kind === 'word' ? null : { min: spec.min, max: spec.max },
    choices: spec.kind === 'word' ? spec.choices : null,
    default: spec.kind === 'number' || spec.kind === 'word' ? spec.default : null,
  };
}
