import { ratingRemarkText } from '#core/battery/rating/rating-remark.ts';
import type { RatingReport } from '#core/battery/rating/rating-report.ts';
import { FieldHelp } from '../../controls/FieldFrame.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { useStudy } from '../../state/shown-study.ts';
import { formatFigure } from '../../text/format.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import { MatrixRow } from './MatrixRow.tsx';

/** How closely the model meets what the block was rated with, and behind the mark what had to be assumed. */
export const RatingMetRow = () => {
  const text = useText(packsTexts);
  const language = useSettings((state) => state.language);
  const { study } = useStudy();
  const closeness = ({ kind, curves, points }: RatingReport): string => {
    if (kind === 'fitted') return text.ratingFitted;
    if (kind === 'curves') {
      const worst = Math.max(...curves.map(({ rmsMv }) => rmsMv));
      return text.ratingCurves(formatFigure(worst, language, 2));
    }
    const worst = Math.max(...points.map(({ misfitPercent }) => Math.abs(misfitPercent)));
    return text.ratingPoints(formatFigure(worst, language, 2));
  };
  return (
    <MatrixRow
      label={text.ratingMet}
      help={text.ratingMetHelp}
      renderCell={(option) => {
        const rating = study?.options.find(({ id }) => id === option.id)?.rating;
        if (rating === undefined) return <span className="matrix-word">–</span>;
        return (
          <span className="matrix-word">
            {closeness(rating)}
            {rating.remarks.length === 0 ? null : (
              <FieldHelp
                label={`${text.ratingMet}, ${option.name}`}
                help={rating.remarks.map((remark) => ratingRemarkText(remark, language)).join(' ')}
              />
            )}
          </span>
        );
      }}
    />
  );
};
