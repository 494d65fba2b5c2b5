import type { WiringBranch, WiringDevice } from '../plan/schema/wiring-branch.ts';
import { stroke, words } from './diagram-shapes.ts';
import type { DiagramShape, ShapeRole } from './diagram-shapes.ts';
import { drawSymbol, symbolHalfWidth } from './diagram-symbols.ts';
import type { SymbolKind } from './diagram-symbols.ts';
import type { Topology } from './topology.ts';

/** Texts beside a branch: its size above the line, its currents and drop below. */
export interface BranchNote {
  readonly size: string;
  readonly value: string;
  readonly role: ShapeRole;
}

export interface DiagramNotes {
  branch(index: number): BranchNote;
  /** Text under a device, such as its voltage. */
  device(id: string): string;
}

/** Where a branch or device lies, for selection by pointer. */
export interface DiagramTarget {
  readonly kind: 'branch' | 'device';
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface OneLineDiagram {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly DiagramShape[];
  readonly targets: readonly DiagramTarget[];
  /** What the picture shows, in one sentence for those who do not see it. */
  readonly summary: string;
}

const rowHeight = 92;
const marginX = 26;
const marginY = 46;
/** Width of a letter of the size and value lines, in diagram units; a little generous so that lines never touch. */
const letterWidth = 5.9;
const elementGap = 12;

const deviceSymbol: Readonly<Record<WiringDevice['kind'], SymbolKind>> = {
  string: 'battery',
  pack: 'junction',
  'mid-point': 'battery',
  junction: 'junction',
  controller: 'motor-controller',
  motor: 'motor',
  'brake-resistor': 'resistor',
  converter: 'dc-converter',
  accessory: 'load',
  'charge-port': 'socket',
};

/** Symbols of a branch in order from the source: fuse nearest, then switch, then connector. */
export function branchSymbols(branch: WiringBranch): SymbolKind[] {
  const symbols: SymbolKind[] = [];
  if (branch.fuse !== null)
    symbols.push(branch.fuse.class.startsWith('breaker') ? 'breaker' : 'fuse');
  if (branch.switchgear !== null) {
    const { kind } = branch.switchgear;
    symbols.push(
      kind === 'isolator' ? 'disconnector' : kind === 'contactor' ? 'contactor' : 'make-contact',
    );
  }
  if (branch.connector !== null) symbols.push('plug-socket');
  return symbols;
}

interface Placed {
  readonly device: WiringDevice;
  readonly column: number;
  readonly row: number;
}

/**
 * Lays the wiring out as a one-line diagram: columns by distance from the pack, one row for each end, the way to the
 * motors straight along the top. Branches that close a loop are dashed.
 */
export function layoutDiagram(topology: Topology, notes: DiagramNotes): OneLineDiagram {
  const { placed, tree, rows } = placeDevices(topology);
  const columns = Math.max(0, ...[...placed.values()].map((place) => place.column)) + 1;
  const columnX = columnPlaces(topology, placed, notes, columns);
  const shapes: DiagramShape[] = [];
  const targets: DiagramTarget[] = [];
  const at = (place: Placed) => ({ x: columnX[place.column]!, y: marginY + place.row * rowHeight });
  topology.branches.forEach((entry, index) => {
    const from = placed.get(entry.branch.from);
    const to = placed.get(entry.branch.to);
    if (from === undefined || to === undefined) return;
    drawBranch(
      entry.branch,
      notes.branch(index),
      at(from),
      at(to),
      from.device,
      to.device,
      !tree.has(index),
      shapes,
      targets,
    );
  });
  for (const place of placed.values()) {
    const { x, y } = at(place);
    const symbol = deviceSymbol[place.device.kind];
    const half = Math.max(12, symbolHalfWidth[symbol]);
    shapes.push(...drawSymbol(symbol, x, y));
    const drawnName = place.device.kind === 'junction' || place.device.kind === 'pack';
    shapes.push(words(x, y - (drawnName ? 12 : 24), place.device.name, 'name'));
    shapes.push(words(x, y + (drawnName ? 20 : 32), notes.device(place.device.id), 'value'));
    targets.push({
      kind: 'device',
      id: place.device.id,
      x: x - half,
      y: y - 20,
      width: 2 * half,
      height: 40,
    });
  }
  const names = topology.branches.map(({ branch }) => branch.name).join(', ');
  return {
    width: Math.round((columnX[columns - 1] ?? 0) + 70 + marginX),
    height: marginY * 2 + Math.max(0, rows - 1) * rowHeight,
    shapes,
    targets,
    summary: `${placed.size}: ${[...placed.values()].map((place) => place.device.name).join(', ')}. ${topology.branches.length}: ${names}.`,
  };
}

/** Walks from each supply along the branches; the child with the motor comes first so that the main line stays straight. */
function placeDevices(topology: Topology): {
  placed: Map<string, Placed>;
  tree: Set<number>;
  rows: number;
} {
  const placed = new Map<string, Placed>();
  const tree = new Set<number>();
  const children = new Map<string, { index: number; id: string }[]>();
  const hasParent = new Set<string>();
  topology.branches.forEach(({ branch }, index) => {
    children.set(branch.from, [...(children.get(branch.from) ?? []), { index, id: branch.to }]);
    hasParent.add(branch.to);
  });
  const weightOf = (id: string, seen: ReadonlySet<string>): number => {
    if (seen.has(id)) return 0;
    const kind = topology.devices.find((device) => device.id === id)?.kind;
    const own = kind === 'motor' ? 100 : kind === 'controller' ? 50 : 1;
    const inner = new Set([...seen, id]);
    return own + Math.max(0, ...(children.get(id) ?? []).map((child) => weightOf(child.id, inner)));
  };
  let rows = 0;
  const visit = (id: string, column: number): number => {
    const device = topology.devices.find((candidate) => candidate.id === id)!;
    const row = rows;
    placed.set(id, { device, column, row });
    const ordered = (children.get(id) ?? []).toSorted(
      (one, other) => weightOf(other.id, new Set([id])) - weightOf(one.id, new Set([id])),
    );
    let first = true;
    for (const child of ordered) {
      if (placed.has(child.id)) continue;
      if (!first) rows += 1;
      first = false;
      tree.add(child.index);
      visit(child.id, column + 1);
    }
    return row;
  };
  const roots = [
    ...topology.devices.filter((device) => !hasParent.has(device.id)),
    ...topology.devices,
  ];
  for (const root of roots) {
    if (placed.has(root.id)) continue;
    visit(root.id, 0);
    rows += 1;
  }
  return { placed, tree, rows };
}

function columnPlaces(
  topology: Topology,
  placed: ReadonlyMap<string, Placed>,
  notes: DiagramNotes,
  columns: number,
): number[] {
  const widths = Array.from({ length: columns }, () => 90);
  topology.branches.forEach(({ branch }, index) => {
    const from = placed.get(branch.from);
    const to = placed.get(branch.to);
    if (from === undefined || to === undefined || to.column !== from.column + 1) return;
    const note = notes.branch(index);
    const elements = branchSymbols(branch).reduce(
      (sum, kind) => sum + 2 * symbolHalfWidth[kind] + elementGap,
      0,
    );
    const text = Math.max(note.size.length, note.value.length, branch.name.length) * letterWidth;
    widths[to.column] = Math.max(widths[to.column]!, Math.max(elements, text) + 74);
  });
  let x = marginX + 26;
  return widths.map((width, column) => {
    if (column > 0) x += width;
    return x;
  });
}

interface Point {
  readonly x: number;
  readonly y: number;
}

function drawBranch(
  branch: WiringBranch,
  note: BranchNote,
  from: Point,
  to: Point,
  fromDevice: WiringDevice,
  toDevice: WiringDevice,
  loop: boolean,
  shapes: DiagramShape[],
  targets: DiagramTarget[],
): void {
  const startX = from.x + symbolHalfWidth[deviceSymbol[fromDevice.kind]];
  const endX = to.x - symbolHalfWidth[deviceSymbol[toDevice.kind]];
  const turnX = startX + 14;
  if (loop) {
    shapes.push(
      stroke(`M${startX} ${from.y}h10V${to.y - 34}H${endX - 8}V${to.y}H${endX}`, 'wire', true),
    );
    return;
  }
  if (from.y !== to.y) shapes.push(stroke(`M${startX} ${from.y}H${turnX}V${to.y}`, 'wire'));
  let x = from.y === to.y ? startX : turnX;
  const lineStart = x;
  const symbols = branchSymbols(branch);
  x += 4;
  let drawnTo = lineStart;
  for (const kind of symbols) {
    const half = symbolHalfWidth[kind];
    const centre = x + half;
    shapes.push(stroke(`M${drawnTo} ${to.y}H${centre - half}`, 'wire'));
    shapes.push(...drawSymbol(kind, centre, to.y));
    if (branch.fuse !== null && (kind === 'fuse' || kind === 'breaker')) {
      shapes.push(words(centre, to.y + 17, `${branch.fuse.ratedA} A`, 'size'));
    }
    drawnTo = centre + half;
    x = drawnTo + elementGap;
  }
  shapes.push(stroke(`M${drawnTo} ${to.y}H${endX}`, 'wire'));
  const textX = lineStart + 8;
  shapes.push(words(textX, to.y - 26, branch.name, 'name', 'start'));
  shapes.push(words(textX, to.y - 13, note.size, 'size', 'start'));
  shapes.push(words(textX, to.y + 31, note.value, note.role, 'start'));
  targets.push({
    kind: 'branch',
    id: branch.id,
    x: lineStart,
    y: to.y - 38,
    width: endX - lineStart,
    height: 74,
  });
}
