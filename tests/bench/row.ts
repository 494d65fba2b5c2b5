/** A line of the bench: what was timed, its time, and what follows from it. */
export interface BenchRow {
  readonly what: string;
  readonly ms: number;
  readonly note: string;
}
