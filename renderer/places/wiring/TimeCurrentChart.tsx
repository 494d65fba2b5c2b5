import { longestS, shortestS, type Coordination, type CurvePoint } from '#core/wiring/index.ts';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure } from '../../text/format.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

const width = 640;
const height = 420;
const left = 58;
const right = 16;
const top = 46;
const bottom = 44;

interface TimeCurrentChartProps {
  readonly chart: Coordination;
  readonly title: string;
}

/** Time against current, both logarithmic: the fuse as a band, the wire as two lines, currents as upright marks. */
export const TimeCurrentChart = ({ chart, title }: TimeCurrentChartProps) => {
  const text = useText(wiringTexts).fuses;
  const language = useSettings((state) => state.language);
  const currents = [
    ...chart.marks.map((mark) => mark.currentA),
    chart.fuse.ratedA,
    ...chart.fuseLatest.map((point) => point.currentA),
  ];
  const lowA = 10 ** Math.floor(Math.log10(Math.min(...currents) * 0.8));
  const highA = Math.max(...currents) * 1.25;
  const x = (currentA: number): number =>
    left + ((width - left - right) * Math.log(currentA / lowA)) / Math.log(highA / lowA);
  const y = (timeS: number): number =>
    top + ((height - top - bottom) * Math.log(longestS / timeS)) / Math.log(longestS / shortestS);
  const line = (points: readonly CurvePoint[]): string =>
    points
      .map(
        ({ currentA, timeS }, index) =>
          `${index === 0 ? 'M' : 'L'}${x(currentA).toFixed(1)} ${y(timeS).toFixed(1)}`,
      )
      .join('');
  const band = `${line(chart.fuseEarliest)}${line(chart.fuseLatest.toReversed()).replace('M', 'L')}Z`;
  const sorted = chart.marks.toSorted((one, other) => one.currentA - other.currentA);
  return (
    <figure className="time-current">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`${title}. ${chart.readings.map((reading) => reading.text).join(' ')}`}
      >
        <g className="tc-grid">
          {decades(lowA, highA).map((value) => (
            <g key={`x${value}`}>
              <path d={`M${x(value)} ${top}V${height - bottom}`} />
              <text x={x(value)} y={height - bottom + 16} textAnchor="middle">
                {formatFigure(value, language)}
              </text>
            </g>
          ))}
          {decades(shortestS, longestS).map((value) => (
            <g key={`y${value}`}>
              <path d={`M${left} ${y(value)}H${width - right}`} />
              <text x={left - 6} y={y(value) + 4} textAnchor="end">
                {formatFigure(value, language)}
              </text>
            </g>
          ))}
          <text x={width - right} y={height - 8} textAnchor="end">{`${text.current}, A`}</text>
          <text x={left} y={top - 30} textAnchor="end">{`${text.time}, s`}</text>
        </g>
        <path className="tc-band" d={band} />
        <path className="tc-fuse" d={line(chart.fuseEarliest)} />
        <path className="tc-fuse" d={line(chart.fuseLatest)} />
        <path className="tc-rated" d={line(chart.wireRated)} />
        <path className="tc-harmed" d={line(chart.wireHarmed)} />
        {sorted.map((mark, index) => {
          const at = x(mark.currentA);
          const foot = y(shortestS);
          const head = mark.timeS === null ? top : y(Math.min(longestS, mark.timeS));
          const labelY = top - 8 - 13 * (index % 2);
          return (
            <g key={`${mark.kind}${mark.currentA}`} className={`tc-mark tc-mark-${mark.kind}`}>
              <path d={`M${at} ${foot}V${head}`} />
              {mark.timeS === null ? null : <path d={`M${at - 5} ${head}h10`} />}
              <path className="tc-leader" d={`M${at} ${head}V${labelY + 3}`} />
              <text
                x={Math.min(width - right, Math.max(left, at))}
                y={labelY}
                textAnchor={at > width - 90 ? 'end' : at < left + 40 ? 'start' : 'middle'}
              >
                {text.marks[mark.kind]}
              </text>
            </g>
          );
        })}
      </svg>
      <figcaption className="tc-legend">
        <span className="tc-key tc-key-band">{text.band}</span>
        <span className="tc-key tc-key-rated">{text.rated}</span>
        <span className="tc-key tc-key-harmed">{text.harmed}</span>
      </figcaption>
    </figure>
  );
};

/** Powers of ten inside a range. */
function decades(low: number, high: number): number[] {
  const found: number[] = [];
  for (let power = Math.ceil(Math.log10(low) - 1e-9); 10 ** power <= high; power += 1)
    found.push(10 ** power);
  return found;
}
