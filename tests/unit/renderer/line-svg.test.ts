import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { LinePicture } from '#renderer/charts/chart-series.ts';
import { lineSvg } from '#renderer/charts/line-svg.ts';
import { lightSeries } from '#renderer/styles/series.ts';

const time = Float64Array.of(0, 10, 20, 40);
const picture: LinePicture = {
  title: 'Discharge: <bus> voltage',
  summary: 'Two packs & a cutoff.',
  xAxis: { label: 'time', unit: 'min' },
  yAxis: { label: 'bus voltage', unit: 'V' },
  series: [
    {
      id: 'a',
      name: 'Lead "old"',
      index: 0,
      role: 'main',
      x: time,
      y: Float64Array.of(26, 25, 24, 20),
    },
    {
      id: 'b',
      name: 'LFP & co',
      index: 1,
      role: 'main',
      x: time,
      y: Float64Array.of(27, 26.5, 26, 25),
    },
    {
      id: 'c',
      name: 'before',
      index: 0,
      role: 'ghost',
      x: time,
      y: Float64Array.of(26, 24, 23, 21),
    },
  ],
  bands: [
    {
      id: 'a',
      index: 0,
      x: time,
      low: Float64Array.of(25, 24, 23),
      high: Float64Array.of(27, 26, 25, 22),
    },
  ],
  levels: [{ id: 'cutoff', label: 'Cutoff 21 V', y: 21 }],
  events: [{ id: 'end', label: 'ended', x: 40, y: 20, index: 0 }],
  window: { from: 0, to: 40 },
};

/** The points of every line that is drawn without a fill, with its colour and dash. */
const linesOf = (svg: string) =>
  [...svg.matchAll(/<path ([^>]*)\/>/g)]
    .map(([, attributes = '']) =>
      Object.fromEntries(
        [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value]),
      ),
    )
    .map(({ d = '', stroke, fill, ...rest }) => ({
      stroke,
      fill,
      dash: rest['stroke-dasharray'],
      points: [...d.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)].map(([, x, y]) => [Number(x), Number(y)]),
    }));

test('the drawing of a chart holds every point of every line where it belongs', () => {
  const lines = linesOf(lineSvg(picture, 'en')).filter(({ points }) => points.length === 4);
  expect(lines.map(({ stroke, dash }) => [stroke, dash])).toEqual([
    ['#4a545a', '2 2'],
    [lightSeries[1], '8 4'],
    [lightSeries[0], undefined],
  ]);
  for (const [at, { points }] of lines.toReversed().entries()) {
    const { x, y } = picture.series[at]!;
    // Both axes are straight: equal steps of the figures are equal steps on paper.
    const across = (points[3]![0]! - points[0]![0]!) / 40;
    const down = (points[1]![1]! - points[0]![1]!) / (y[1]! - y[0]!);
    expect(across).toBeGreaterThan(10);
    expect(down).toBeLessThan(-10);
    points.forEach((point, index) => {
      expect(point[0]).toBeCloseTo(points[0]![0]! + across * x[index]!, 0);
      expect(Math.abs(point[1]! - points[0]![1]! - down * (y[index]! - y[0]!))).toBeLessThan(1);
    });
  }
});

test('the drawing of a chart says title, axes with units, every line and every level, and no markup of its own', () => {
  const svg = lineSvg(picture, 'en');
  const words = [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, text]) => text);
  for (const said of [
    'Discharge: &lt;bus&gt; voltage',
    'time [min] →',
    '↑ bus voltage [V]',
    'Lead &quot;old&quot;',
    'LFP &amp; co',
    'Cutoff 21 V',
  ]) {
    expect(words).toContain(said);
  }
  expect(svg).toContain('<desc>Two packs &amp; a cutoff.</desc>');
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
});

test('the drawing of a stretch ends at its edges and says numbers as the language does', () => {
  const svg = lineSvg({ ...picture, window: { from: 5, to: 15 }, bands: [], levels: [] }, 'de');
  const [line] = linesOf(svg).filter(
    ({ stroke, points }) => stroke === lightSeries[0] && points.length === 3,
  );
  expect(line?.points.map(([x]) => x)).toEqual([64, 500, 936]);
  expect(svg).toMatch(/>25,5</);
});

test('a chart without a point is still a drawing', () => {
  expect(
    lineSvg({ ...picture, series: [], bands: [], levels: [], events: [] }, 'en'),
  ).not.toContain('NaN');
});

test('the colours of drawings are those of the light theme', () => {
  const tokens = readFileSync(
    new URL('../../../renderer/styles/tokens.css', import.meta.url),
    'utf8',
  );
  const light = tokens.slice(0, tokens.indexOf('}'));
  const found = [...light.matchAll(/--series-\d: (#[0-9a-f]{6})/g)].map(([, colour]) => colour);
  expect(found).toEqual([...lightSeries]);
});
