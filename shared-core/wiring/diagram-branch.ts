import type { WiringBranch, WiringDevice } from '../plan/schema/wiring-branch.ts';
import { stroke, words } from './diagram-shapes.ts';
import type { DiagramShape, ShapeRole } from './diagram-shapes.ts';
import { drawSymbol, symbolHalfWidth } from './diagram-symbols.ts';
import type { SymbolKind } from './diagram-symbols.ts';

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

/** Widths of a letter of the small and of the bold line, in diagram units; generous, so that lines never touch. */
export const letterWidth = 5.9;
export const nameLetterWidth = 6.9;
export const elementGap = 12;
/** Longer device names go on in a second line. */
const nameLine = 17;

export const deviceSymbol: Readonly<Record<WiringDevice['kind'], SymbolKind>> = {
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

/** Drawn as a dot: nothing but a place where wires meet. */
export function isDot(device: WiringDevice): boolean {
  return deviceSymbol[device.kind] === 'junction';
}

/** A name in one or two lines, cut between words. */
export function nameLines(name: string): string[] {
  if (name.length <= nameLine) return [name];
  const cut = name.lastIndexOf(' ', Math.max(nameLine, Math.ceil(name.length / 2)));
  if (cut < 1) return [`${name.slice(0, nameLine - 1)}…`];
  const rest = name.slice(cut + 1);
  return [
    name.slice(0, cut),
    rest.length > nameLine + 3 ? `${rest.slice(0, nameLine + 2)}…` : rest,
  ];
}

export function halfNameWidth(device: WiringDevice): number {
  const longest = Math.max(...nameLines(device.name).map((text) => text.length));
  return Math.max(symbolHalfWidth[deviceSymbol[device.kind]], (longest * nameLetterWidth) / 2);
}

/** How far right of a device the texts and symbols of a branch begin: clear of its name, or of the line down. */
export function contentOffset(device: WiringDevice, straight: boolean): number {
  return straight ? halfNameWidth(device) + 10 : turnOffset(device) + 10;
}

/** Where a branch leaves the main line downwards: at the dot itself, or right of a symbol. */
function turnOffset(device: WiringDevice): number {
  return isDot(device) ? 0 : symbolHalfWidth[deviceSymbol[device.kind]] + 14;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

interface BranchEnds {
  readonly from: Point;
  readonly to: Point;
  readonly fromDevice: WiringDevice;
  readonly toDevice: WiringDevice;
}

/** A branch from device to device: wire, the symbols in it, its texts, and where it can be pressed. */
export function drawBranch(
  branch: WiringBranch,
  note: BranchNote,
  { from, to, fromDevice, toDevice }: BranchEnds,
  loop: boolean,
): { shapes: DiagramShape[]; target: DiagramTarget | null } {
  const shapes: DiagramShape[] = [];
  const startX = from.x + symbolHalfWidth[deviceSymbol[fromDevice.kind]];
  const endX = to.x - symbolHalfWidth[deviceSymbol[toDevice.kind]];
  if (loop) {
    const path = `M${startX} ${from.y}h10V${to.y - 44}H${endX - 8}V${to.y}H${endX}`;
    return { shapes: [stroke(path, 'wire', true)], target: null };
  }
  const straight = from.y === to.y;
  const turnX = from.x + turnOffset(fromDevice);
  if (!straight) shapes.push(stroke(`M${startX} ${from.y}H${turnX}V${to.y}`, 'wire'));
  const lineStart = straight ? startX : turnX;
  const contentX = from.x + contentOffset(fromDevice, straight);
  let x = contentX;
  let drawnTo = lineStart;
  for (const kind of branchSymbols(branch)) {
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
  shapes.push(words(contentX, to.y - 28, branch.name, 'name', 'start'));
  shapes.push(words(contentX, to.y - 15, note.size, 'size', 'start'));
  shapes.push(words(contentX, to.y + 31, note.value, note.role, 'start'));
  return {
    shapes,
    target: {
      kind: 'branch',
      id: branch.id,
      x: lineStart,
      y: to.y - 40,
      width: endX - lineStart,
      height: 76,
    },
  };
}
