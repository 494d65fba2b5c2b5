import { WorkingButton } from '../controls/Figure.tsx';
import { useCompare } from '../state/compare-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { compareTexts } from '../text/compare.ts';
import { formatFixed, thinSpace } from '../text/format.ts';
import { formatMinuteRange } from '../text/format-range.ts';
import { useText } from '../text/use-text.ts';
import { spreadWorking } from '../workings/spread-working.ts';

/** Low to high and the chance of the goal in the row of an option; pale while they belong to an older plan. */
export const SpreadCells = ({ id, name }: { readonly id: string; readonly name: string }) => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const spread = useCompare((state) => state.spread);
  const isFresh = useCompare((state) => state.fresh.has('spread'));
  const option = spread?.options.find((each) => each.id === id);
  if (spread === null || option === undefined) {
    return (
      <>
        <td className="number strip-spread" data-stale="true">
          <span title={text.computing}>…</span>
        </td>
        <td className="number" data-stale="true">
          …
        </td>
      </>
    );
  }
  const { goalPercent, low, high } = option;
  return (
    <>
      <td className="number strip-spread" data-stale={!isFresh}>
        <WorkingButton
          label={text.spreadOf(name)}
          working={() => spreadWorking(option, spread, language)}
        >
          {formatMinuteRange(low.value, high.value, language)}
        </WorkingButton>
      </td>
      <td className="number" data-stale={!isFresh}>
        {goalPercent === null ? '–' : `${formatFixed(goalPercent, language, 0)}${thinSpace}%`}
      </td>
    </>
  );
};
