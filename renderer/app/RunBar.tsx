import { seriesLook } from '../styles/series.ts';
import { useCompare } from '../state/compare-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { formatFigure, formatMinutes } from '../text/format.ts';
import { compareTexts } from '../text/compare.ts';
import { stripTexts } from '../text/strip.ts';
import { useText } from '../text/use-text.ts';
import type { OptionStudy } from '#core/study/study.ts';

interface RunBarProps {
  readonly id: string;
  readonly index: number;
  readonly study: OptionStudy | null;
  readonly name: string;
  readonly goalMin: number;
  readonly scaleMin: number;
}

/** The run time to scale, the part the accessories took hatched behind it, low to high as a line, a tick at the goal. */
export const RunBar = ({ id, index, study, name, goalMin, scaleMin }: RunBarProps) => {
  const text = useText(stripTexts);
  const language = useSettings((state) => state.language);
  const compare = useText(compareTexts);
  const spread = useCompare((state) => state.spread?.options.find((each) => each.id === id));
  const isFresh = useCompare((state) => state.fresh.has('spread'));
  // Room at the right so that the longest bar and its lost minutes do not touch the edge.
  const share = (minutes: number): string => `${Math.min(100, (94 * minutes) / scaleMin)}%`;
  const minutes = study?.run.runTimeMin ?? 0;
  const full = Math.max(minutes, study?.withoutAccessories.runTimeMin ?? 0);
  const percent = goalMin > 0 ? formatFigure((100 * minutes) / goalMin, language, 3) : '–';
  const range =
    spread === undefined || !isFresh
      ? ''
      : compare.barRange(
          formatMinutes(spread.low.value, language),
          formatMinutes(spread.high.value, language),
        );
  return (
    <div
      className="run-bar"
      role="img"
      aria-label={[text.barOf(name, formatMinutes(minutes, language), percent), range]
        .filter((part) => part !== '')
        .join(', ')}
    >
      <span className="run-bar-lost" style={{ width: share(full) }} />
      <span
        className="run-bar-fill"
        style={{
          width: share(minutes),
          backgroundColor: `var(--series-${seriesLook(index).number})`,
        }}
      />
      {spread === undefined ? null : (
        <span
          className="run-bar-spread"
          data-stale={!isFresh}
          style={{
            left: share(spread.low.value),
            width: `calc(${share(spread.high.value)} - ${share(spread.low.value)})`,
          }}
        />
      )}
      {goalMin > 0 ? <span className="run-bar-goal" style={{ left: share(goalMin) }} /> : null}
    </div>
  );
};
