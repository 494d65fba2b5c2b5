/** Why a drive cannot be computed, with the path of the plan field that cures it. */
export interface DriveProblem {
  readonly path: string;
  readonly problem: string;
  readonly remedy: string;
}
