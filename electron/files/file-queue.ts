/**
 * Runs jobs on one file strictly one after the other, jobs on different files freely. Two saves in
 * quick succession then land in the order they were asked for.
 */
export const createFileQueue = () => {
  const last = new Map<string, Promise<unknown>>();
  return <T>(path: string, job: () => Promise<T>): Promise<T> => {
    const before = last.get(path) ?? Promise.resolve();
    const result = before.then(job, job);
    // The chain goes on after a failed job; its failure belongs to whoever asked for it.
    const settled = result.then(
      () => undefined,
      () => undefined,
    );
    last.set(path, settled);
    void settled.then(() => {
      if (last.get(path) === settled) last.delete(path);
    });
    return result;
  };
};
export type FileQueue = ReturnType<typeof createFileQueue>;
