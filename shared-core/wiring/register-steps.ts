import type { FoundWire } from '../plan/schema/wire-register.ts';
import type { Deduction } from './deduce-wires.ts';

/** A test that would tell more about wires, in the order that keeps hands and parts safe. */
export interface RegisterStep {
  readonly test:
    | 'resistance-to-minus'
    | 'continuity'
    | 'volts-key-off'
    | 'volts-key-on'
    | 'volts-throttle'
    | 'trace-by-hand';
  readonly wireIds: readonly string[];
}

/**
 * What to measure next: first with the pack disconnected, then with the key off, then on, last with wheels off the ground
 * and the throttle pressed. Only wires whose function is still open are named.
 */
export function registerSteps(
  wires: readonly FoundWire[],
  deductions: readonly Deduction[],
): RegisterStep[] {
  const open = new Set(
    deductions
      .filter((entry) => entry.deduced === null || !entry.certain)
      .map((entry) => entry.wireId),
  );
  const ask = (
    test: RegisterStep['test'],
    missing: (wire: FoundWire) => boolean,
  ): RegisterStep[] => {
    const wireIds = wires
      .filter((wire) => open.has(wire.id) && missing(wire))
      .map((wire) => wire.id);
    return wireIds.length === 0 ? [] : [{ test, wireIds }];
  };
  return [
    ...ask('resistance-to-minus', (wire) => wire.toMinusOhm === null),
    ...(wires.length > 1
      ? ask('continuity', (wire) => wire.joinedTo.length === 0 && !complete(wire))
      : []),
    ...ask('volts-key-off', (wire) => wire.keyOffV === null),
    ...ask('volts-key-on', (wire) => wire.keyOnV === null),
    ...ask('volts-throttle', (wire) => wire.throttleV === null),
    ...ask('trace-by-hand', complete),
  ];
}

/** Every reading that the register knows has been taken. */
function complete(wire: FoundWire): boolean {
  return (
    wire.toMinusOhm !== null &&
    wire.keyOffV !== null &&
    wire.keyOnV !== null &&
    wire.throttleV !== null
  );
}
