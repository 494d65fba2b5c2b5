import { describe, expect, test } from 'vitest';
import { barDrawing } from '#core/sheet/drawing/bar-drawing.ts';
import { ink } from '#core/sheet/drawing/drawing.ts';
import { lineDrawing } from '#core/sheet/drawing/line-drawing.ts';
import { niceTicks } from '#core/sheet/drawing/nice-ticks.ts';
import { thinLine } from '#core/sheet/drawing/thin-line.ts';
import { sheetVoice } from '#core/sheet/sheet-voice.ts';

const voice = sheetVoice('en', 'metric');

describe('ticks', () => {
  test.each([
    [0, 100, 4, [0, 25, 50, 75, 100]],
    [20.3, 25.6, 4, [21, 22, 23, 24, 25]],
    [0, 63.8, 6, [0, 10, 20, 30, 40, 50, 60]],
    [-1, 1, 4, [-1, -0.5, 0, 0.5, 1]],
  ])('from %d to %d about %d of them are round', (low, high, count, expected) => {
    // From memory of how rulers are divided: 1, 2, 2.5, 5.
    expect(niceTicks(low, high, count)).toEqual(expected);
  });
  test('a range without width has one', () => {
    expect(niceTicks(3, 3, 4)).toEqual([3]);
  });
});

describe('a thinned line', () => {
  const x = Float64Array.from({ length: 10_000 }, (_, index) => index);
  const y = Float64Array.from(x, (at) => (at === 4711 ? -50 : Math.sin(at / 900)));
  test('keeps a single dip, the ends and the order, with far fewer points', () => {
    const thin = thinLine(x, y, 100);
    expect(thin.length).toBeLessThanOrEqual(400);
    expect(thin).toContainEqual([4711, -50]);
    expect(thin[0]).toEqual([0, y[0]]);
    expect(thin.at(-1)).toEqual([9999, y[9999]]);
    expect(thin.every(([at], index) => index === 0 || at > thin[index - 1]![0])).toBe(true);
  });
  test('leaves a short one as it is', () => {
    expect(thinLine([0, 1, 1, 2], [5, 4, 3, 2], 1)).toEqual([
      [0, 5],
      [1, 4],
      [1, 3],
      [2, 2],
    ]);
  });
});

describe('a chart', () => {
  const chart = lineDrawing(
    {
      id: 'x',
      title: 'T',
      summary: 'S',
      xLabel: 'minutes',
      yLabel: 'V',
      lines: [
        { name: 'a', x: [0, 10], y: [24, 20], stroke: { colour: ink.first, width: 1 } },
        {
          name: 'b',
          x: [0, 10],
          y: [24, 22],
          stroke: { colour: ink.second, width: 1, dash: '4 2' },
        },
      ],
      levels: [{ label: 'cutoff', y: 21 }],
    },
    voice,
  );
  test('stays inside its frame and names lines and levels', () => {
    for (const mark of chart.marks) {
      const numbers = mark.kind === 'text' ? [mark.x, mark.y] : [];
      expect(numbers.every((value) => value >= 0 && value <= chart.width)).toBe(true);
    }
    const texts = chart.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(texts).toEqual(expect.arrayContaining(['T', 'V', 'minutes', 'cutoff', 'a', 'b']));
  });
  test('draws a falling line downwards', () => {
    const path = chart.marks.find(
      (mark) => mark.kind === 'path' && mark.stroke?.colour === ink.first,
    );
    const [, from, to] = /M\S+ (\S+)L\S+ (\S+)/.exec(path?.kind === 'path' ? path.d : '') ?? [];
    expect(Number(to)).toBeGreaterThan(Number(from));
  });
  test('survives a series of one point and of none', () => {
    for (const points of [[], [1]]) {
      const { marks } = lineDrawing(
        {
          id: 'x',
          title: '',
          summary: '',
          xLabel: '',
          yLabel: '',
          lines: [{ name: '', x: points, y: points, stroke: { colour: ink.first, width: 1 } }],
          yLow: 0,
          yHigh: 1,
        },
        voice,
      );
      expect(JSON.stringify(marks)).not.toMatch(/NaN|Infinity|null/);
    }
  });
});

test('bars are as long as their values, longest first, with their share', () => {
  const { marks } = barDrawing(
    {
      id: 'b',
      title: 'B',
      summary: '',
      bars: [
        { label: 'small', value: 25 },
        { label: 'large', value: 75 },
      ],
    },
    voice,
  );
  const lengths = marks.flatMap((mark) =>
    mark.kind === 'path' ? [Number(/h([\d.]+)v/.exec(mark.d)?.[1])] : [],
  );
  expect(lengths[0]! / lengths[1]!).toBeCloseTo(3, 1);
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  expect(texts.join('|')).toMatch(/large\|75\u202FW·h · 75\u202F%\|small\|25/);
});
