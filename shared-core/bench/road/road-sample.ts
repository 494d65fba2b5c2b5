import type { Plan } from '../../plan/schema/plan.ts';
import type { SurfaceId } from '../../plan/schema/surface.ts';
import type { LoggedRun } from '../log/logged-run.ts';

/** A stretch driven: how fast, at what pack current, on what ground. */
export interface RoadSample {
  readonly speedKmh: number;
  /** Pack current for the motors, accessories off [A]. */
  readonly packA: number;
  /** Bus voltage with it [V]; null: the pack at half charge under that current. */
  readonly busV: number | null;
  /** Gain of speed meanwhile [m/s²]; 0 at an even speed. */
  readonly accelerationMps2: number;
  readonly surface: SurfaceId;
  /** Rise over run [%]. */
  readonly gradePercent: number;
  /** Error of the push derived from it (1 sigma, share). */
  readonly error: number;
}

/** Speeds over a distance with the pack current beside them, as taken on an option's pack. */
export function samplesOfReadings(plan: Plan, optionId: string): RoadSample[] {
  return (plan.bench?.readings ?? []).flatMap((reading): RoadSample[] =>
    reading.kind === 'speed' &&
    reading.optionId === optionId &&
    reading.packCurrentA !== null &&
    reading.packCurrentA > 0
      ? [
          {
            speedKmh: (3.6 * reading.distanceM) / reading.timeS,
            packA: reading.packCurrentA,
            busV: null,
            accelerationMps2: 0,
            surface: reading.surface,
            gradePercent: reading.gradePercent,
            error: reading.accuracyPercent / 100,
          },
        ]
      : [],
  );
}

/** Stretches of a drive log are this long [s]; the slowest counted [km/h]. */
const stretchS = 10;
const slowestKmh = 1;
/** Error of the push of one stretch: slopes and bumps that no log knows. Common practice, no source. */
const stretchError = 0.2;

/**
 * Stretches of a logged drive on level ground of one surface, where the machine moves under current. Empty where the log
 * holds no speed.
 */
export function samplesOfRun(run: LoggedRun, surface: SurfaceId): RoadSample[] {
  const { timeS, currentA, speedKmh, voltageV } = run;
  if (speedKmh === null) return [];
  const samples: RoadSample[] = [];
  let from = 0;
  for (let row = 1; row < timeS.length; row += 1) {
    if (timeS[row]! - timeS[from]! < stretchS) continue;
    const rows = row - from + 1;
    const mean = (column: Float64Array) =>
      column.subarray(from, row + 1).reduce((sum, value) => sum + value, 0) / rows;
    const sample: RoadSample = {
      speedKmh: mean(speedKmh),
      packA: mean(currentA),
      busV: voltageV === null ? null : mean(voltageV),
      accelerationMps2:
        (speedKmh[row]! - speedKmh[from]!) / 3.6 / Math.max(1e-3, timeS[row]! - timeS[from]!),
      surface,
      gradePercent: 0,
      error: stretchError,
    };
    const isWhole = timeS[row]! - timeS[from]! < 2 * stretchS;
    const moves = speedKmh.subarray(from, row + 1).every((speed) => speed > slowestKmh);
    if (isWhole && moves && sample.packA > 0) samples.push(sample);
    from = row;
  }
  return samples;
}
