/**
 * The long fuzz: random valid plans, random values, spoilt files and spoilt logs through everything the core computes.
 * Prints counts, the worst time and the seeds of what failed; ends with code 1 when anything did.
 *
 *   npm run fuzz -- [--count 10000] [--from 1] [--kind plans|values|files|logs]
 */
import { fork } from 'node:child_process';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { buildOrExit } from './build.mjs';
import { ensureInstalled, projectFolder } from './setup.mjs';

const longestMs = 5_000;

ensureInstalled();
const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '10000' },
    from: { type: 'string', default: '1' },
    kind: { type: 'string' },
  },
});
await buildOrExit(['fuzz']);
const worker = join(projectFolder, 'dist', 'fuzz', 'fuzz.mjs');

/** Works through seeds in a child; a case that hangs costs the child and the next one goes on behind it. */
const runChild = (kind, from, to, tally) =>
  new Promise((resolve) => {
    let seed = from;
    let watch;
    const child = fork(worker, [kind, String(from), String(to)]);
    const end = (next) => {
      clearTimeout(watch);
      resolve(next);
    };
    child.on('message', (message) => {
      clearTimeout(watch);
      seed = message.seed;
      if (message.began === true) {
        watch = setTimeout(() => {
          child.kill('SIGKILL');
        }, 4 * longestMs);
        return;
      }
      tally.add(message);
    });
    child.once('exit', (code) => {
      if (code === 0) return end(to);
      tally.add({
        seed,
        ms: 4 * longestMs,
        kind: 'fault',
        words: 'ended or hung without a result',
      });
      end(seed + 1);
    });
  });

const tallyOf = (kind) => {
  const counts = { worked: 0, refused: 0, fault: 0, slow: 0 };
  let worst = { ms: 0, seed: 0 };
  const faults = [];
  return {
    counts,
    faults,
    add(message) {
      counts[message.kind] += 1;
      if (message.kind === 'fault') faults.push(message);
      if (message.ms > longestMs) {
        counts.slow += 1;
        faults.push({ ...message, words: `took ${message.ms.toFixed(0)} ms` });
      }
      if (message.ms > worst.ms) worst = { ms: message.ms, seed: message.seed };
    },
    line: () =>
      `${kind.padEnd(6)} ${counts.worked} worked, ${counts.refused} refused with a typed problem, ` +
      `${counts.fault} faults, ${counts.slow} over ${longestMs / 1000} s; worst ${worst.ms.toFixed(0)} ms (seed ${worst.seed})`,
  };
};

let failed = false;
const from = Number(values.from);
const to = from + Number(values.count);
for (const kind of values.kind === undefined
  ? ['plans', 'values', 'files', 'logs']
  : [values.kind]) {
  const tally = tallyOf(kind);
  for (let next = from; next < to;) next = await runChild(kind, next, to, tally);
  console.log(tally.line());
  for (const { seed, words } of tally.faults.slice(0, 20))
    console.log(`  seed ${seed}: ${String(words).split('\n').slice(0, 3).join(' | ')}`);
  failed ||= tally.faults.length > 0;
}
console.log(`seeds ${from} to ${to - 1}`);
process.exit(failed ? 1 : 0);
