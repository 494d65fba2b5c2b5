import type { Plugin } from 'chart.js';

/** Where in the canvas the lines are drawn [CSS pixels]. */
export interface DrawnArea {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Tells when the area of the lines has changed, so that something can be laid over it. */
export function areaReport(report: (area: DrawnArea) => void): Plugin<'line'> {
  let last: DrawnArea | null = null;
  return {
    id: 'areaReport',
    afterLayout({ chartArea: { left, right, top, bottom } }) {
      const isSame =
        last?.left === left && last.right === right && last.top === top && last.bottom === bottom;
      if (isSame) return;
      last = { left, right, top, bottom };
      report(last);
    },
  };
}
