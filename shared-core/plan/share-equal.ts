const isPart = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const idOf = (value: unknown): unknown => (isPart(value) ? value['id'] : undefined);

/** The entry an entry of a list was before: the one of the same identifier, or else the one at the same place. */
function formerEntry(before: readonly unknown[], entry: unknown, index: number): unknown {
  const id = idOf(entry);
  const there = before[index];
  if (id === undefined || idOf(there) === id) return there;
  return before.find((each) => idOf(each) === id);
}

/**
 * The same value with every part that has not changed replaced by the part of `before`, so that unchanged parts are the
 * same objects again after a copy between threads. Neither is written to.
 *
 * @param before an earlier value of the same shape: plain objects, lists and single values
 */
export function shareEqual<T>(before: unknown, now: T): T {
  if (Object.is(before, now)) return now;
  if (!isPart(before) || !isPart(now)) return now;
  if (Array.isArray(now)) {
    if (!Array.isArray(before)) return now;
    const shared = now.map((entry, index) => shareEqual(formerEntry(before, entry, index), entry));
    const isSame =
      shared.length === before.length && shared.every((entry, index) => entry === before[index]);
    return (isSame ? before : shared) as T;
  }
  if (Array.isArray(before)) return now;
  const keys = Object.keys(now);
  const shared = Object.fromEntries(keys.map((key) => [key, shareEqual(before[key], now[key])]));
  const isSame =
    Object.keys(before).length === keys.length &&
    keys.every((key) => key in before && Object.is(shared[key], before[key]));
  return (isSame ? before : shared) as T;
}
