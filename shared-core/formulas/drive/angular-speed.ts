const rpmPerRadPerS = 30 / Math.PI;

/** Turning speed in turns a minute from radians a second. */
export function toRpm(radPerS: number): number {
  return radPerS * rpmPerRadPerS;
}

/** Turning speed in radians a second from turns a minute. */
export function toRadPerS(rpm: number): number {
  return rpm / rpmPerRadPerS;
}
