import { useSettings } from '../../../state/settings-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import { formatMinutes } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import { placeOn, type MinuteScale } from './Histogram.tsx';

const steps = [1, 2, 5, 10, 15, 30, 60, 120, 240, 480];

/** Round minutes on the scale, four or five of them. */
function ticksOf({ from, to }: MinuteScale): number[] {
  const step = steps.find((each) => (to - from) / each <= 5) ?? 960;
  const first = Math.ceil(from / step);
  const count = Math.floor(to / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, at) => (first + at) * step);
}

/** Minutes under the histograms, and the goal by name. */
export const HistogramAxis = ({
  scale,
  goalMin,
}: {
  readonly scale: MinuteScale;
  readonly goalMin: number | null;
}) => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const ticks = ticksOf(scale).filter((tick) => {
    const place = placeOn(scale, tick);
    const nearGoal = goalMin !== null && Math.abs(place - placeOn(scale, goalMin)) < 14;
    return !nearGoal && place > 4 && place < 96;
  });
  return (
    <div className="histogram-axis">
      {ticks.map((tick) => (
        <span key={tick} className="histogram-tick" style={{ left: `${placeOn(scale, tick)}%` }}>
          {formatMinutes(tick, language)}
        </span>
      ))}
      {goalMin === null ? null : (
        <span
          className="histogram-tick histogram-tick-goal"
          style={{ left: `${placeOn(scale, goalMin)}%` }}
        >
          {text.goal}
        </span>
      )}
    </div>
  );
};
