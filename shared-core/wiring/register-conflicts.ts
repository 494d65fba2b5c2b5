import type { FoundWire, WireFunction } from '../plan/schema/wire-register.ts';
import type { Deduction } from './deduce-wires.ts';

export interface RegisterConflict {
  readonly kind:
    | 'two-sources'
    | 'unlike-volts'
    | 'return-missing'
    | 'colour-twice'
    | 'label-twice'
    | 'reversed'
    | 'known-against-reading'
    | 'plus-joined-to-minus';
  readonly wireIds: readonly string[];
  /** Functions, colour or label it is about. */
  readonly about: string;
}

const sources: ReadonlySet<WireFunction> = new Set([
  'battery-plus',
  'converter-output',
  'charge-plus',
  'throttle-supply',
]);

/** Contradictions between found wires: what must be cleared before anything is connected. */
export function registerConflicts(
  wires: readonly FoundWire[],
  deductions: readonly Deduction[],
): RegisterConflict[] {
  const functionOf = new Map(deductions.map((entry) => [entry.wireId, entry.deduced]));
  const conflicts: RegisterConflict[] = [];
  for (const group of joinedGroups(wires)) {
    const functions = new Set(
      group
        .map((wire) => functionOf.get(wire.id))
        .filter((name) => name !== null && name !== undefined),
    );
    const feeding = [...functions].filter((name) => sources.has(name));
    const ids = group.map((wire) => wire.id);
    if (feeding.length > 1)
      conflicts.push({ kind: 'two-sources', wireIds: ids, about: feeding.join(', ') });
    if (feeding.length < 2 && unlikeVolts(group))
      conflicts.push({ kind: 'unlike-volts', wireIds: ids, about: '' });
    if (functions.has('return') && feeding.length > 0) {
      conflicts.push({ kind: 'plus-joined-to-minus', wireIds: ids, about: feeding.join(', ') });
    }
  }
  const functions = [...functionOf.values()];
  if (
    functions.some((name) => name === 'battery-plus' || name === 'switched-plus') &&
    !functions.includes('return')
  ) {
    conflicts.push({ kind: 'return-missing', wireIds: [], about: '' });
  }
  const named = (key: 'colour' | 'label') =>
    groupBy(wires, (wire) => wire[key].trim().toLowerCase());
  for (const [colour, group] of named('colour')) {
    const kinds = new Set(
      group
        .map((wire) => functionOf.get(wire.id))
        .filter((name) => name !== null && name !== undefined),
    );
    if (kinds.size > 1)
      conflicts.push({
        kind: 'colour-twice',
        wireIds: group.map((wire) => wire.id),
        about: colour,
      });
  }
  for (const [label, group] of named('label')) {
    if (group.length > 1)
      conflicts.push({ kind: 'label-twice', wireIds: group.map((wire) => wire.id), about: label });
  }
  for (const wire of wires) {
    const lowest = Math.min(wire.keyOffV ?? 0, wire.keyOnV ?? 0, wire.throttleV ?? 0);
    if (lowest < -0.5) conflicts.push({ kind: 'reversed', wireIds: [wire.id], about: '' });
    if (wire.known === 'switched-plus' && (wire.keyOffV ?? 0) > 3) {
      conflicts.push({ kind: 'known-against-reading', wireIds: [wire.id], about: wire.known });
    }
    if (
      wire.known === 'return' &&
      Math.max(Math.abs(wire.keyOnV ?? 0), Math.abs(wire.keyOffV ?? 0)) > 1
    ) {
      conflicts.push({ kind: 'known-against-reading', wireIds: [wire.id], about: wire.known });
    }
  }
  return conflicts;
}

/** Readings of one node lie together; further apart than this is not the meter [V]. Common practice, no source. */
const sameNodeV = 1;

/** Wires of one node read in the same position of the key, with different volts. */
function unlikeVolts(group: readonly FoundWire[]): boolean {
  return (['keyOffV', 'keyOnV'] as const).some((position) => {
    const volts = group.map((wire) => wire[position]).filter((value) => value !== null);
    return volts.length > 1 && Math.max(...volts) - Math.min(...volts) > sameNodeV;
  });
}

/** Wires that beep with each other, directly or through others; only groups of two and more. */
function joinedGroups(wires: readonly FoundWire[]): FoundWire[][] {
  const groupOf = new Map<string, string>(wires.map((wire) => [wire.id, wire.id]));
  const root = (id: string): string => {
    const up = groupOf.get(id);
    return up === undefined || up === id ? id : root(up);
  };
  for (const wire of wires) {
    for (const other of wire.joinedTo)
      if (groupOf.has(other)) groupOf.set(root(wire.id), root(other));
  }
  return [...groupBy(wires, (wire) => root(wire.id)).values()].filter((group) => group.length > 1);
}

function groupBy(
  wires: readonly FoundWire[],
  key: (wire: FoundWire) => string,
): Map<string, FoundWire[]> {
  const groups = new Map<string, FoundWire[]>();
  for (const wire of wires) {
    const name = key(wire);
    if (name === '') continue;
    groups.set(name, [...(groups.get(name) ?? []), wire]);
  }
  return groups;
}
