import { dischargeWindow } from '../bench/log/discharge-window.ts';
import type { LoggedRun } from '../bench/log/logged-run.ts';
import type { LogLoad } from '../plan/schema/leg-load.ts';

/** Most rows a leg carries; the schema's bound is wider. */
const mostRows = 2000;
/** Shares of the peak current within which neighbouring rows may be joined, tried in turn. */
const tolerances = [0, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2];

/** What a log says at a glance. */
export interface LogFigures {
  readonly lastsS: number;
  /** Average over its whole length, pauses included [A]. */
  readonly meanA: number;
  readonly peakA: number;
  readonly chargeAh: number;
  /** Null where the log has no volts. */
  readonly energyWh: number | null;
}

type Columns = Pick<LoggedRun, 'timeS' | 'currentA' | 'voltageV' | 'unitVoltageV'>;

/**
 * A logged run as the load of a leg: from the first to the last current drawn, thinned so that charge and energy stay and
 * a peak is cut only where more than 2000 rows would be needed.
 *
 * Each value holds from its time to the next. Rows are joined while their currents lie within a tolerance; the joined row
 * carries their mean current over time, and the volts that keep their energy.
 *
 * @param run as the log reader gives it, discharge positive
 * @returns null where the run has no rows of length
 * Source: derived.
 */
export function logLoadOf(
  run: Columns,
  name: string,
  replay: LogLoad['replay'] = 'current',
): LogLoad | null {
  const window = dischargeWindow(run.timeS, run.currentA);
  const first = window?.start ?? 0;
  const last = window?.end ?? run.timeS.length - 1;
  const { timeS, currentA } = run;
  // The last value would hold for no time at all; it lasts as long as the one before.
  const tailS = last > first ? timeS[last]! - timeS[last - 1]! : 0;
  const endS = last < timeS.length - 1 ? timeS[last + 1]! : timeS[last]! + tailS;
  const lastsS = endS - timeS[first]!;
  if (!(lastsS > 0)) return null;
  let peak = 0;
  for (let row = first; row <= last; row += 1) peak = Math.max(peak, Math.abs(currentA[row]!));
  for (const tolerance of tolerances) {
    const rows = joined(run, first, last, endS, tolerance * peak);
    if (rows.timeS.length <= mostRows) return { kind: 'log', name, replay, lastsS, ...rows };
  }
  return null;
}

/** Volts of the whole pack in a row: as logged, else the sum of its units; null where there are none. */
function voltsOf({ voltageV, unitVoltageV }: Columns): ((row: number) => number) | null {
  if (voltageV !== null) return (row) => voltageV[row]!;
  if (unitVoltageV.length === 0) return null;
  return (row) => unitVoltageV.reduce((sum, unit) => sum + unit[row]!, 0);
}

function joined(run: Columns, first: number, last: number, endS: number, toleranceA: number) {
  const { timeS, currentA } = run;
  const volts = voltsOf(run);
  const rows: Pick<LogLoad, 'timeS' | 'currentA' | 'voltageV'> = {
    timeS: [],
    currentA: [],
    voltageV: [],
  };
  let row = first;
  while (row <= last) {
    const start = row;
    let low = currentA[row]!;
    let high = low;
    let seconds = 0;
    let charge = 0;
    let energy = 0;
    let voltSeconds = 0;
    while (row <= last) {
      const current = currentA[row]!;
      low = Math.min(low, current);
      high = Math.max(high, current);
      if (row > start && high - low > toleranceA) break;
      const holdsS = (row < last ? timeS[row + 1]! : endS) - timeS[row]!;
      const voltage = volts === null ? 0 : Math.max(0, volts(row));
      seconds += holdsS;
      charge += current * holdsS;
      energy += current * voltage * holdsS;
      voltSeconds += voltage * holdsS;
      row += 1;
    }
    // Two rows at one time are a switching; the first holds for no time.
    if (seconds === 0) continue;
    rows.timeS.push(rounded(timeS[start]! - timeS[first]!, 1e3));
    rows.currentA.push(rounded(charge / seconds, 1e4));
    if (volts !== null) {
      const mean = voltSeconds / seconds;
      rows.voltageV.push(rounded(Math.abs(charge) > 1e-6 * seconds ? energy / charge : mean, 1e4));
    }
  }
  return rows;
}

function rounded(value: number, parts: number): number {
  return Math.round(value * parts) / parts;
}

/** Mean, peak, charge and energy of a log over its length. */
export function logFigures(log: LogLoad): LogFigures {
  const hasVolts = log.voltageV.length === log.currentA.length;
  let charge = 0;
  let energy = 0;
  let peakA = 0;
  log.currentA.forEach((current, row) => {
    const until = Math.min(log.lastsS, log.timeS[row + 1] ?? log.lastsS);
    const holdsS = Math.max(0, until - log.timeS[row]!);
    charge += current * holdsS;
    energy += current * (log.voltageV[row] ?? 0) * holdsS;
    peakA = Math.max(peakA, current);
  });
  return {
    lastsS: log.lastsS,
    meanA: charge / log.lastsS,
    peakA,
    chargeAh: charge / 3600,
    energyWh: hasVolts ? energy / 3600 : null,
  };
}
