import type { LogLoad } from '../plan/schema/leg-load.ts';
import type { LoadTerms } from '../run/load-source.ts';

/** Index of the row that holds at `timeS` of the log, by bisection. */
export function logRow(log: LogLoad, timeS: number): number {
  let low = 0;
  let high = log.timeS.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (log.timeS[middle]! <= timeS) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Position in the log of a time since its start: the log repeats. */
export function logTime(log: LogLoad, sinceStartS: number): number {
  return sinceStartS - Math.floor(sinceStartS / log.lastsS) * log.lastsS;
}

/** Seconds from a position in the log to its next row or its end. */
export function logRemainingS(log: LogLoad, timeS: number): number {
  const next = log.timeS[logRow(log, timeS) + 1];
  return (next === undefined || next > log.lastsS ? log.lastsS : next) - timeS;
}

/** Load of the row: amperes, or the logged watts where the log has volts and is replayed as power. */
export function logTerms(log: LogLoad, timeS: number, into: LoadTerms): void {
  const row = logRow(log, timeS);
  const amps = log.currentA[row] ?? 0;
  const volts = log.voltageV[row];
  const asPower = log.replay === 'power' && volts !== undefined;
  into.currentA = asPower ? 0 : amps;
  into.powerW = asPower ? amps * volts : 0;
  into.conductanceS = 0;
}
