import { fuzzCase, type FuzzKind } from './kinds.ts';

/** A child of `npm run fuzz`: works through a range of seeds and reports each, before and after. */
const [kind, from, to] = process.argv.slice(2) as [FuzzKind, string, string];
const send = (message: object): Promise<void> =>
  new Promise((resolve) => {
    process.send!(message, () => resolve());
  });

for (let seed = Number(from); seed < Number(to); seed += 1) {
  await send({ seed, began: true });
  const start = performance.now();
  try {
    const outcome = fuzzCase(kind, seed);
    await send({ seed, ms: performance.now() - start, kind: outcome.kind });
  } catch (error) {
    const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
    await send({ seed, ms: performance.now() - start, kind: 'fault', words });
  }
}
process.disconnect();
