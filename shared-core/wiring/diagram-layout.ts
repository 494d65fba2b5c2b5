import type { WiringDevice } from '../plan/schema/wiring-branch.ts';
import {
  branchSymbols,
  contentOffset,
  deviceSymbol,
  drawBranch,
  elementGap,
  halfNameWidth,
  isDot,
  letterWidth,
  nameLetterWidth,
  nameLines,
} from './diagram-branch.ts';
import type { DiagramNotes, DiagramTarget } from './diagram-branch.ts';
import { words } from './diagram-shapes.ts';
import type { DiagramShape } from './diagram-shapes.ts';
import { drawSymbol, symbolHalfWidth } from './diagram-symbols.ts';
import type { Topology } from './topology.ts';

export interface OneLineDiagram {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly DiagramShape[];
  readonly targets: readonly DiagramTarget[];
  /** What the picture shows, in one sentence for those who do not see it. */
  readonly summary: string;
}

const rowHeight = 96;
const marginX = 22;
const marginTop = 58;
const marginBottom = 48;
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
  const at = (place: Placed) => ({
    x: columnX[place.column]!,
    y: marginTop + place.row * rowHeight,
  });
  topology.branches.forEach((entry, index) => {
    const from = placed.get(entry.branch.from);
    const to = placed.get(entry.branch.to);
    if (from === undefined || to === undefined) return;
    const ends = { from: at(from), to: at(to), fromDevice: from.device, toDevice: to.device };
    const drawn = drawBranch(entry.branch, notes.branch(index), ends, !tree.has(index));
    shapes.push(...drawn.shapes);
    if (drawn.target !== null) targets.push(drawn.target);
  });
  for (const place of placed.values()) {
    const { x, y } = at(place);
    const { device } = place;
    const symbol = deviceSymbol[device.kind];
    const half = Math.max(12, symbolHalfWidth[symbol]);
    shapes.push(...drawSymbol(symbol, x, y));
    const lines = nameLines(device.name);
    const foot = isDot(device) ? 12 : 24;
    lines.forEach((text, index) =>
      shapes.push(words(x, y - foot - 13 * (lines.length - 1 - index), text, 'name')),
    );
    const value = notes.device(device.id);
    shapes.push(
      isDot(device)
        ? words(x - 6, y + 17, value, 'value', 'end')
        : words(x, y + 32, value, 'value'),
    );
    targets.push({
      kind: 'device',
      id: device.id,
      x: x - half,
      y: y - 20,
      width: 2 * half,
      height: 40,
    });
  }
  const nameOf = (id: string) => topology.devices.find((device) => device.id === id)?.name ?? id;
  const last = [...placed.values()].filter((place) => place.column === columns - 1);
  const overhang = Math.max(20, ...last.map((place) => halfNameWidth(place.device)));
  return {
    width: Math.ceil((columnX[columns - 1] ?? 0) + overhang + marginX),
    height: marginTop + marginBottom + Math.max(0, rows - 1) * rowHeight,
    shapes,
    targets,
    summary: topology.branches
      .map(({ branch }) => `${branch.name}: ${nameOf(branch.from)} – ${nameOf(branch.to)}`)
      .join('; '),
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
    const text = Math.max(
      note.size.length * letterWidth,
      note.value.length * letterWidth,
      branch.name.length * nameLetterWidth,
    );
    const lead = contentOffset(from.device, from.row === to.row);
    const needed = lead + Math.max(elements, text) + 12 + halfNameWidth(to.device);
    widths[to.column] = Math.max(widths[to.column]!, needed);
  });
  const first = [...placed.values()].filter((place) => place.column === 0);
  let x = marginX + Math.max(20, ...first.map((place) => halfNameWidth(place.device)));
  return widths.map((width, column) => {
    if (column > 0) x += width;
    return Math.round(x);
  });
}
