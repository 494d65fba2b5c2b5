import { describe, expect, test } from 'vitest';
import type { FoundWire } from '#core/plan/schema/wire-register.ts';
import { deduceWires, newFoundWire, registerConflicts, registerSteps } from '#core/wiring/index.ts';

const frame = { packLowV: 23.9, packHighV: 26.4, converterV: 12 };
const wire = (id: string, rest: Partial<FoundWire>): FoundWire => ({
  ...newFoundWire(id, id.toUpperCase()),
  ...rest,
});
const deduced = (rest: Partial<FoundWire>) => deduceWires([wire('a', rest)], frame)[0]!;

describe('the wire register', () => {
  test.each([
    [{ keyOffV: 25.4 }, 'battery-plus'],
    [{ keyOffV: 0, keyOnV: 25.3 }, 'switched-plus'],
    [{ keyOffV: 0, keyOnV: 5.0, throttleV: 5.0 }, 'throttle-supply'],
    [{ keyOffV: 0, keyOnV: 0.9, throttleV: 4.1 }, 'throttle-signal'],
    [{ keyOffV: 0, keyOnV: 12.1 }, 'converter-output'],
    [{ toMinusOhm: 0.1 }, 'return'],
    [{ keyOffV: 0, keyOnV: 0, throttleV: 0, toMinusOhm: 1.4 }, 'motor'],
    [{ keyOffV: 0, keyOnV: 0, throttleV: 0, toMinusOhm: 1e8 }, 'not-connected'],
  ] as const)('readings %j say %s', (readings, expected) => {
    expect(deduced(readings).deduced).toBe(expected);
  });

  test('a wire without readings stays open, and the pack is disconnected for its first test', () => {
    const wires = [wire('a', {}), wire('b', {})];
    const deductions = deduceWires(wires, frame);
    expect(
      deductions.every((entry) => entry.deduced === null && entry.reason === 'readings-missing'),
    ).toBe(true);
    expect(registerSteps(wires, deductions).map((step) => step.test)).toEqual([
      'resistance-to-minus',
      'continuity',
      'volts-key-off',
      'volts-key-on',
      'volts-throttle',
    ]);
  });

  test('a wire whose function is clear is asked for nothing more', () => {
    const wires = [wire('a', { keyOffV: 25.4 })];
    expect(registerSteps(wires, deduceWires(wires, frame))).toEqual([]);
  });

  test('a wire measured through and still unclear is followed by hand', () => {
    const wires = [wire('a', { keyOffV: 8, keyOnV: 8, throttleV: 8, toMinusOhm: 3000 })];
    expect(registerSteps(wires, deduceWires(wires, frame))).toEqual([
      { test: 'trace-by-hand', wireIds: ['a'] },
    ]);
  });

  const conflictsOf = (...wires: FoundWire[]) =>
    registerConflicts(wires, deduceWires(wires, frame)).map((entry) => entry.kind);
  const minus = wire('m', { toMinusOhm: 0.1 });

  test('wires that beep with each other at 38 V and 12 V contradict each other, a volt apart they pass', () => {
    const high = wire('h', { keyOffV: 38, keyOnV: 38, joinedTo: ['l'] });
    expect(conflictsOf(high, wire('l', { keyOffV: 12, keyOnV: 12 }), minus)).toContain(
      'unlike-volts',
    );
    expect(conflictsOf(high, wire('l', { keyOffV: 37, keyOnV: 37 }), minus)).not.toContain(
      'unlike-volts',
    );
  });

  test('battery plus and converter output that beep together are two sources on one node', () => {
    const plus = wire('p', { keyOffV: 25.3, joinedTo: ['c'] });
    const converter = wire('c', { keyOffV: 0, keyOnV: 12 });
    expect(conflictsOf(plus, converter, minus)).toEqual(['two-sources']);
    expect(conflictsOf({ ...plus, joinedTo: [] }, converter, minus)).toEqual([]);
  });

  test('live wires without a return are a conflict', () => {
    expect(conflictsOf(wire('p', { keyOffV: 25.3 }))).toEqual(['return-missing']);
  });

  test('one colour with two functions is a conflict, with one function it is not', () => {
    const red = wire('p', { keyOffV: 25.3, colour: 'Red' });
    expect(conflictsOf(red, wire('q', { keyOffV: 0, keyOnV: 25, colour: 'red' }), minus)).toEqual([
      'colour-twice',
    ]);
    expect(conflictsOf(red, wire('q', { keyOffV: 25.2, colour: 'red' }), minus)).toEqual([]);
  });

  test('a negative reading is reversed', () => {
    expect(conflictsOf(wire('p', { keyOffV: -25 }), minus)).toEqual(['reversed']);
  });

  test('plus that beeps with minus is a short circuit', () => {
    expect(conflictsOf(wire('p', { keyOffV: 25, joinedTo: ['m'] }), minus)).toContain(
      'plus-joined-to-minus',
    );
  });

  test('a wire called return that carries voltage contradicts its reading', () => {
    expect(conflictsOf(wire('r', { known: 'return', keyOnV: 12 }))).toEqual([
      'known-against-reading',
    ]);
  });

  test('two wires with one label are named', () => {
    expect(
      conflictsOf({ ...minus, label: 'L1' }, wire('n', { toMinusOhm: 0.1, label: 'l1' })),
    ).toEqual(['label-twice']);
  });
});
