import { useState } from 'react';
import { ratingOfKind } from '#core/battery/rating-forms.ts';
import type { Rating } from '#core/plan/schema/block.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { Button } from '../../controls/Button.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { edit } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useStudyState } from '../../state/study-store.ts';
import { ratingTexts } from '../../text/rating.ts';
import { useText } from '../../text/use-text.ts';
import { QuantityTabs } from '../run/QuantityTabs.tsx';
import { assumedFor } from './assumed.ts';
import { CurveList } from './CurveList.tsx';
import { RatingPointsTable } from './RatingPointsTable.tsx';

interface RatingDialogProps {
  readonly option: Option;
  readonly index: number;
  readonly onClose: () => void;
}

const kinds = ['exponent', 'points', 'curves'] as const;

/** How the block's capacity falls with the rate: by exponent, by the maker's table or by curves. */
export const RatingDialog = ({ option, index, onClose }: RatingDialogProps) => {
  const text = useText(ratingTexts);
  const language = useSettings((state) => state.language);
  const problems = useStudyState((state) => state.problems);
  // What was typed in one form comes back when it is chosen again.
  const [put, setPut] = useState<Partial<Record<Rating['kind'], Rating>>>({});
  const { rating } = option.pack.block;
  const path = `options.${index}.pack.block.rating`;
  const problem = problems.find((each) => each.path.startsWith(path));
  const change = (next: Rating): void =>
    edit(text.changed, (plan) => {
      const block = plan.options[index]?.pack.block;
      if (block !== undefined) block.rating = next;
    });
  return (
    <Dialog
      title={text.title(option.name)}
      isOpen
      onClose={onClose}
      size="large"
      actions={
        <Button look="main" onPress={onClose}>
          {text.done}
        </Button>
      }
    >
      <div className="rating">
        <p className="soft">{text.lead}</p>
        <QuantityTabs
          label={text.kind}
          selected={rating.kind}
          entries={kinds.map((id) => ({ id, label: text.kinds[id] }))}
          onSelect={(kind) => {
            setPut({ ...put, [rating.kind]: rating });
            change(put[kind] ?? ratingOfKind(option.pack.block, kind));
          }}
        />
        <p className="soft">{text.kindLeads[rating.kind]}</p>
        {rating.kind === 'exponent' ? (
          <div className="field-grid">
            <QuantityField
              path={`${path}.exponent`}
              assumed={assumedFor('exponent', option, language)}
            />
          </div>
        ) : rating.kind === 'points' ? (
          <RatingPointsTable
            points={rating.points}
            path={`${path}.points`}
            onChange={(points) => change({ kind: 'points', points })}
          />
        ) : (
          <CurveList
            curves={rating.curves}
            path={`${path}.curves`}
            onChange={(curves) => change({ kind: 'curves', curves })}
          />
        )}
        {problem === undefined ? null : (
          <p className="field-error" role="alert">{`${problem.problem} ${problem.remedy}`}</p>
        )}
      </div>
    </Dialog>
  );
};
