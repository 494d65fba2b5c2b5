/** What a shape means; the place and the sheet choose colours by it. */
export type ShapeRole = 'wire' | 'symbol' | 'name' | 'size' | 'value' | 'good' | 'warn' | 'stop';

/** The few shapes a one-line diagram needs; as data, so that screen, sheet and file draw the same picture. */
export type DiagramShape =
  | {
      readonly kind: 'path';
      /** SVG path data in diagram units. */
      readonly d: string;
      readonly role: ShapeRole;
      readonly filled: boolean;
      readonly dashed: boolean;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly role: ShapeRole;
    };

export function stroke(d: string, role: ShapeRole = 'symbol', dashed = false): DiagramShape {
  return { kind: 'path', d, role, filled: false, dashed };
}

export function solid(d: string, role: ShapeRole = 'symbol'): DiagramShape {
  return { kind: 'path', d, role, filled: true, dashed: false };
}

export function words(
  x: number,
  y: number,
  text: string,
  role: ShapeRole,
  anchor: 'start' | 'middle' | 'end' = 'middle',
): DiagramShape {
  return { kind: 'text', x, y, text, anchor, role };
}
