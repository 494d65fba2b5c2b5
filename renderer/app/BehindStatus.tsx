import { Button } from '../controls/Button.tsx';
import { resumeCompare, stopCompare, useCompare } from '../state/compare-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { compareTexts } from '../text/compare.ts';
import { formatFixed } from '../text/format.ts';
import { useText } from '../text/use-text.ts';
import './behind.css';

/** How far the work behind the figures is, and the way to break it off or to take it up again. */
export const BehindStatus = () => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const { running, progress, isStopped, failure } = useCompare();
  if (failure !== null || isStopped) {
    return (
      <span className="behind">
        <span>{failure === null ? text.stopped : text.failed(failure)}</span>
        <Button look="quiet" onPress={resumeCompare}>
          {text.again}
        </Button>
      </span>
    );
  }
  if (running === null) return null;
  const share = progress === null ? 0 : progress.done / progress.count;
  const leftMs = progress?.leftMs ?? null;
  return (
    <span className="behind behind-running">
      <progress className="behind-bar" value={share} max={1} aria-label={text.behind[running]} />
      <span>
        {text.behind[running]}
        {leftMs === null
          ? ''
          : `: ${text.progress(
              formatFixed(100 * share, language, 0),
              text.seconds(formatFixed(Math.ceil(leftMs / 1000), language, 0)),
            )}`}
      </span>
      <Button look="quiet" onPress={stopCompare}>
        {text.cancel}
      </Button>
    </span>
  );
};
