import { describe, expect, test } from 'vitest';
import {
  coordinate,
  coordinationSvg,
  drawCoordination,
  type CoordinationLabels,
} from '#core/wiring/index.ts';
import { branchOf, wiredSample } from './wired.ts';

const labels: CoordinationLabels = {
  current: 'Current',
  time: 'Time',
  band: 'Fuse opens',
  rated: 'Wire reaches its rating',
  harmed: 'Insulation destroyed',
  marks: {
    cruising: 'Cruising',
    charge: 'Charging',
    limit: 'Controller limit',
    start: 'Start',
    stall: 'Stall',
    runaway: 'Controller shorted',
    fault: 'Short <at> the far end',
  },
};

function chartOf(branchId: string) {
  const { study, wiring } = wiredSample('campsite-tug', 'lead-24');
  return coordinate(study, branchOf(wiring, branchId), wiring.startSeconds, 'en')!;
}

describe('the drawing of the coordination chart', () => {
  const chart = chartOf('main');
  const drawing = drawCoordination(chart, labels, 'en');
  const texts = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));

  test('names every current that occurs, each label inside the frame and none over another', () => {
    const names = texts.filter(({ role }) => role === 'name');
    expect(names.map(({ text }) => text).toSorted()).toEqual(
      chart.marks.map(({ kind }) => labels.marks[kind]).toSorted(),
    );
    for (const one of names) {
      // 5.6 units a letter of 11 units: the usual width of a sans-serif letter, from memory.
      const half = (5.6 * one.text.length) / 2;
      expect(one.x - half).toBeGreaterThanOrEqual(0);
      expect(one.x + half).toBeLessThanOrEqual(drawing.width);
      for (const other of names) {
        if (other === one || other.y !== one.y) continue;
        expect(Math.abs(other.x - one.x)).toBeGreaterThan(half + (5.6 * other.text.length) / 2);
      }
    }
  });

  test('is logarithmic: each decade of time is as high as the next', () => {
    const decades = texts
      .filter(
        ({ role, anchor, text }) => role === 'scale' && anchor === 'end' && /^[\d.,]+$/.test(text),
      )
      .map(({ y }) => y);
    const steps = decades.slice(1).map((y, index) => decades[index]! - y);
    expect(steps.length).toBeGreaterThan(4);
    for (const step of steps) expect(step).toBeCloseTo(steps[0]!, 6);
  });

  test('as a file it is one SVG element with its words escaped and no address to load from', () => {
    const svg = coordinationSvg(drawing, 'Chart & words', 'Left "of" it');
    expect(svg).toMatch(/^<svg [^>]*viewBox="0 0 640 452"/);
    expect(svg.trimEnd().endsWith('</svg>')).toBe(true);
    expect(svg).toContain('Short &#60;at&#62; the far end');
    expect(svg).toContain('Chart &#38; words');
    expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|href|<script|NaN/);
  });
});

test('the chart of the main line marks the limit of the controller and says on which side of the fuse it lies', () => {
  const { study, wiring } = wiredSample('orchard-cart', 'agm-series');
  const main = branchOf(wiring, 'main');
  const said = (ratedA: number): string => {
    main.fuse!.ratedA = ratedA;
    return coordinate(study, main, wiring.startSeconds, 'en')!
      .readings.map(({ text }) => text)
      .join(' ');
  };
  // The cart's controller is limited to 35 A.
  expect(said(40)).toContain('limit of 35 A lies left of the fuse');
  expect(said(30)).toContain('limit of 35 A lies right of the 30 A rating');
});
