/** Why a text is no plan, or why a plan cannot be used. Stable: shown, tested and printed by the headless command. */
export type PlanProblemCode =
  | 'empty'
  | 'not-json'
  | 'not-a-plan'
  | 'too-new'
  | 'too-old'
  | 'too-large'
  | 'too-deep'
  | 'too-many'
  | 'forbidden-key'
  | 'not-finite'
  | 'missing'
  | 'invalid'
  | 'duplicate-id'
  | 'unknown-reference'
  | 'contradiction';

export interface PlanProblem {
  readonly code: PlanProblemCode;
  /** Field concerned, e.g. `options.0.pack.block.capacityAh`; empty for the whole file. */
  readonly path: string;
  /** Name of the field as shown on screen. */
  readonly title: string;
  /** What is wrong, one sentence. */
  readonly problem: string;
  /** How to mend it, one sentence. */
  readonly remedy: string;
}

/** One line for a terminal or a status bar: field, what is wrong, how to mend it. */
export function problemLine(problem: PlanProblem): string {
  const where = problem.path === '' ? '' : `${problem.path}: `;
  return `${where}${problem.problem} ${problem.remedy}`;
}
