/** A refusal in one line: what, why, how to mend it. */
export function problemWords(problem: {
  readonly field: string;
  readonly problem: string;
  readonly remedy: string;
}): string {
  const remedy = problem.remedy.charAt(0).toUpperCase() + problem.remedy.slice(1);
  return `${problem.field}: ${problem.problem}. ${remedy}.`;
}
