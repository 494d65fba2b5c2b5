import type { FoundWire, WireFunction } from '../plan/schema/wire-register.ts';

/** What the meter expects on the pack's side of the machine. */
export interface MeterFrame {
  /** Pack at rest, empty to full [V]. */
  readonly packLowV: number;
  readonly packHighV: number;
  /** Output of the step-down [V]; null without one. */
  readonly converterV: number | null;
}

export interface Deduction {
  readonly wireId: string;
  /** Null while the readings do not tell. */
  readonly deduced: WireFunction | null;
  readonly certain: boolean;
  /** Which reading decided. */
  readonly reason:
    | 'known'
    | 'live-key-off'
    | 'live-key-on'
    | 'steady-five-volts'
    | 'follows-throttle'
    | 'converter-voltage'
    | 'beeps-to-minus'
    | 'low-resistance-pair'
    | 'dead'
    | 'readings-missing'
    | 'no-pattern';
}

/** Below this a wire is joined to minus, between it and the next a winding is in the way [Ω]; common practice, no source. */
const joinedOhm = 0.5;
const windingOhm = 20;

/**
 * Function of each found wire, from its meter readings: live with the key off is battery plus; live with the key on is
 * switched plus; steady 4.5 to 5.5 V feeds the throttle; 0.4 to 1.5 V that rises with the pedal is its signal.
 *
 * Common practice, no source.
 */
export function deduceWires(wires: readonly FoundWire[], frame: MeterFrame): Deduction[] {
  return wires.map((wire) => deduce(wire, frame));
}

function isDead(value: number | null): boolean {
  return value !== null && Math.abs(value) < 0.3;
}

function deduce(wire: FoundWire, frame: MeterFrame): Deduction {
  const say = (
    deduced: WireFunction | null,
    reason: Deduction['reason'],
    certain = true,
  ): Deduction => ({
    wireId: wire.id,
    deduced,
    certain,
    reason,
  });
  if (wire.known !== null) return say(wire.known, 'known');
  const { keyOffV, keyOnV, throttleV, toMinusOhm } = wire;
  const isPack = (value: number | null) =>
    value !== null && value >= 0.95 * frame.packLowV && value <= 1.05 * frame.packHighV;
  if (toMinusOhm !== null && toMinusOhm <= joinedOhm) return say('return', 'beeps-to-minus');
  if (isPack(keyOffV)) return say('battery-plus', 'live-key-off');
  if (isDead(keyOffV) && isPack(keyOnV)) return say('switched-plus', 'live-key-on');
  if (
    keyOnV !== null &&
    throttleV !== null &&
    keyOnV >= 0.2 &&
    keyOnV <= 1.8 &&
    throttleV >= 2.5 &&
    throttleV <= 5.2
  ) {
    return say('throttle-signal', 'follows-throttle');
  }
  if (keyOnV !== null && keyOnV >= 4.3 && keyOnV <= 5.6) {
    return say(
      'throttle-supply',
      'steady-five-volts',
      throttleV !== null && Math.abs(throttleV - keyOnV) < 0.3,
    );
  }
  if (
    frame.converterV !== null &&
    keyOnV !== null &&
    Math.abs(keyOnV - frame.converterV) <= 0.08 * frame.converterV
  ) {
    return say('converter-output', 'converter-voltage');
  }
  if (toMinusOhm !== null && toMinusOhm > joinedOhm && toMinusOhm <= windingOhm)
    return say('motor', 'low-resistance-pair', false);
  if (
    isDead(keyOffV) &&
    isDead(keyOnV) &&
    isDead(throttleV) &&
    toMinusOhm !== null &&
    toMinusOhm >= 1e6
  ) {
    return say('not-connected', 'dead', false);
  }
  return say(
    null,
    keyOffV === null || keyOnV === null || toMinusOhm === null ? 'readings-missing' : 'no-pattern',
  );
}
