import type { DriveSeries } from './drive-result.ts';

const columns = 4;

/** Append-only rows of time, speed, motor current, temperature. */
export interface DriveRecorder {
  buffer: Float64Array;
  rows: number;
}

export function newDriveRecorder(): DriveRecorder {
  return { buffer: new Float64Array(columns * 256), rows: 0 };
}

/** Appends a row; one that changes nothing against the two before it moves the last one on instead. */
export function record(
  recorder: DriveRecorder,
  timeS: number,
  speedMps: number,
  motorA: number,
  temperatureC: number,
): void {
  const { rows } = recorder;
  if (rows >= 2 && repeats(recorder, speedMps, motorA, temperatureC)) {
    write(recorder, rows - 1, timeS, speedMps, motorA, temperatureC);
    return;
  }
  if ((rows + 1) * columns > recorder.buffer.length) {
    const grown = new Float64Array(recorder.buffer.length * 2);
    grown.set(recorder.buffer);
    recorder.buffer = grown;
  }
  write(recorder, rows, timeS, speedMps, motorA, temperatureC);
  recorder.rows = rows + 1;
}

function write(
  { buffer }: DriveRecorder,
  row: number,
  timeS: number,
  speedMps: number,
  motorA: number,
  temperatureC: number,
): void {
  const at = row * columns;
  buffer[at] = timeS;
  buffer[at + 1] = speedMps;
  buffer[at + 2] = motorA;
  buffer[at + 3] = temperatureC;
}

/** True while the two rows before stand within a hair of the new one, so that a straight line through them loses nothing. */
function repeats(
  { buffer, rows }: DriveRecorder,
  speedMps: number,
  motorA: number,
  temperatureC: number,
): boolean {
  const before = (rows - 2) * columns;
  return (
    Math.abs(buffer[before + 1]! - speedMps) < 0.004 &&
    Math.abs(buffer[before + 2]! - motorA) < 0.02 + 0.004 * Math.abs(motorA) &&
    Math.abs(buffer[before + 3]! - temperatureC) < 0.25
  );
}

export function driveSeries({ buffer, rows }: DriveRecorder): DriveSeries {
  const column = (index: number, scale: number) => {
    const values = new Float64Array(rows);
    for (let row = 0; row < rows; row += 1) values[row] = buffer[row * columns + index]! * scale;
    return values;
  };
  return {
    timeS: column(0, 1),
    speedKmh: column(1, 3.6),
    motorCurrentA: column(2, 1),
    motorTemperatureC: column(3, 1),
  };
}
