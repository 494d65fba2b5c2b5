/** A plan of an older version as it was parsed: a tree of JSON values nobody has checked yet. */
export type RawPlan = Record<string, unknown>;

/**
 * One step from a version to the next. Lives in its own file `NNNN-what-changed.ts`, NNNN being the version it makes,
 * and is never changed once released.
 */
export interface Migration {
  /** Version the step makes out of the one before. */
  readonly to: number;
  /** What changed, one line. */
  readonly name: string;
  /** Returns the plan in the new form; may change `raw`, which is a copy of the reader's own. */
  migrate(raw: RawPlan): RawPlan;
}

/** First version a table of migrations can read: the one before its first step. */
export function oldestReadable(migrations: readonly Migration[], current: number): number {
  return current - migrations.length;
}

/**
 * Lifts `raw` from version `from` to `current`, step by step.
 * The table must hold one step for each version without a gap; a gap is a bug of the program and throws.
 */
export function migrate(
  raw: RawPlan,
  from: number,
  migrations: readonly Migration[],
  current: number,
): RawPlan {
  let plan = raw;
  for (let version = from; version < current; version += 1) {
    const step = migrations.find((entry) => entry.to === version + 1);
    if (step === undefined)
      throw new Error(`No migration from version ${version} to ${version + 1}`);
    plan = { ...step.migrate(plan), version: step.to };
  }
  return plan;
}
