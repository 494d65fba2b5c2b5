import { seriesLook } from '../../../styles/series.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import { formatFixed, formatMinutes } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import type { OptionSpread } from '#core/compare/spread/spread.ts';

/** Minutes at the two ends of the drawing. */
export interface MinuteScale {
  readonly from: number;
  readonly to: number;
}

export const placeOn = ({ from, to }: MinuteScale, minutes: number): number =>
  (100 * (minutes - from)) / (to - from);

interface HistogramProps {
  readonly option: OptionSpread;
  readonly index: number;
  readonly goalMin: number | null;
  readonly scale: MinuteScale;
}

/** Cases of an option by run time, with low, likely and high under the bars and the goal across. */
export const Histogram = ({ option, index, goalMin, scale }: HistogramProps) => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const { edgesMin, counts } = option.histogram;
  const most = Math.max(...counts);
  const x = (minutes: number): number => placeOn(scale, minutes);
  const minutes = (value: number): string => formatMinutes(value, language);
  const chance =
    option.goalPercent === null
      ? ''
      : `, ${text.chance} ${formatFixed(option.goalPercent, language, 0)} %`;
  const colour = `var(--series-${seriesLook(index).number})`;
  return (
    <div
      className="histogram"
      role="img"
      aria-label={text.histogramSummary(
        option.name,
        minutes(option.low.value),
        minutes(option.likely.value),
        minutes(option.high.value),
        chance,
      )}
    >
      <span className="histogram-bars">
        {Array.from(counts, (count, at) => (
          <span
            key={edgesMin[at]}
            className="histogram-bar"
            style={{
              left: `${x(edgesMin[at]!)}%`,
              width: `${x(edgesMin[at + 1]!) - x(edgesMin[at]!)}%`,
              height: `${(100 * count) / most}%`,
              backgroundColor: colour,
            }}
          />
        ))}
      </span>
      {goalMin === null ? null : (
        <span className="histogram-goal" style={{ left: `${x(goalMin)}%` }} />
      )}
      <span
        className="histogram-range"
        style={{
          left: `${x(option.low.value)}%`,
          width: `${x(option.high.value) - x(option.low.value)}%`,
        }}
      />
      <span className="histogram-likely" style={{ left: `${x(option.likely.value)}%` }} />
    </div>
  );
};
