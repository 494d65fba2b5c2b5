import { useState } from 'react';
import type { Option } from '#core/plan/schema/option.ts';
import { Button } from '../../controls/Button.tsx';
import { fetched } from '../../controls/Fetched.tsx';
import { ratingTexts } from '../../text/rating.ts';
import { useText } from '../../text/use-text.ts';
import { MatrixRow } from './MatrixRow.tsx';

const RatingDialog = fetched(async () => (await import('./RatingDialog.tsx')).RatingDialog);

interface CellProps {
  readonly option: Option;
  readonly index: number;
}

const RatingCell = ({ option, index }: CellProps) => {
  const text = useText(ratingTexts);
  const [isOpen, setOpen] = useState(false);
  const { rating } = option.pack.block;
  const summary =
    rating.kind === 'exponent'
      ? text.summary.exponent
      : rating.kind === 'points'
        ? text.summary.points(rating.points.length)
        : text.summary.curves(rating.curves.length);
  return (
    <>
      <Button
        look="quiet"
        field={`options.${index}.pack.block.rating`}
        label={`${text.title(option.name)}, ${summary}`}
        onPress={() => setOpen(true)}
      >
        {summary}
      </Button>
      {isOpen ? (
        <RatingDialog option={option} index={index} onClose={() => setOpen(false)} />
      ) : null}
    </>
  );
};

/** Where each option's capacity at other rates is known from; opens its editor. */
export const RatingRow = () => {
  const text = useText(ratingTexts);
  return (
    <MatrixRow
      label={text.row}
      renderCell={(option, index) => <RatingCell option={option} index={index} />}
    />
  );
};
