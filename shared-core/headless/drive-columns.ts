import type { DriveResult, DriveSeries } from '../drive/drive-result.ts';

/** What the wheels did, as columns beside the run's own; units stand in the heading. */
export const driveColumns = [
  ['speed [km/h]', 'speedKmh'],
  ['motor circuit current [A]', 'motorCurrentA'],
  ['motor winding temperature [°C]', 'motorTemperatureC'],
] as const satisfies readonly (readonly [string, keyof DriveSeries])[];

type DriveValues = readonly (number | undefined)[];

/**
 * Reads the drive's columns at rising times of another series: linear between its own rows. Undefined before its first
 * and after its last row, and for the temperature where the motor's thermal data are missing.
 */
export function driveReader(drive: DriveResult | null): (timeS: number) => DriveValues {
  if (drive === null || drive.series.timeS.length === 0)
    return () => driveColumns.map(() => undefined);
  const { series } = drive;
  const { timeS } = series;
  const last = timeS.length - 1;
  let low = 0;
  return (at) => {
    // Ends of both series differ by rounding only; a microsecond covers it.
    if (at < timeS[0]! - 1e-6 || at > timeS[last]! + 1e-6) return driveColumns.map(() => undefined);
    if (timeS[low]! > at) low = 0;
    while (low < last - 1 && timeS[low + 1]! <= at) low += 1;
    const high = Math.min(low + 1, last);
    const span = timeS[high]! - timeS[low]!;
    const share = span > 0 ? Math.min(1, Math.max(0, (at - timeS[low]!) / span)) : 0;
    return driveColumns.map(([, key]) =>
      key === 'motorTemperatureC' && drive.motorPeakTemperatureC === null
        ? undefined
        : series[key][low]! + share * (series[key][high]! - series[key][low]!),
    );
  };
}
