import { fuzzCase, type FuzzKind } from './kinds.ts';

/** A child of `npm run fuzz`: works through a range of seeds and reports each, before and after. */
const [kind, from, to] = process.argv.slice(2) as [FuzzKind, string, string];
const send = (message: object): Promise<void> =>
  new Promise((resolve) => {
    process.send!(message, () => resolve());
  });

/** Time of the processor, which a busy machine does not stretch. */
const cpuMs = (start: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
};

for (let seed = Number(from); seed < Number(to); seed += 1) {
  await send({ seed, began: true });
  const start = process.cpuUsage();
  try {
    const outcome = fuzzCase(kind, seed);
    await send({ seed, ms: cpuMs(start), kind: outcome.kind });
  } catch (error) {
    const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
    await send({ seed, ms: cpuMs(start), kind: 'fault', words });
  }
}
process.disconnect();
