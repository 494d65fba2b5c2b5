import type { RatingPoint } from '#core/plan/schema/block.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { fieldWords } from '../../text/field-words.ts';
import { ratingTexts } from '../../text/rating.ts';
import { useText } from '../../text/use-text.ts';

interface RatingPointsTableProps {
  readonly points: readonly RatingPoint[];
  /** Path of the list of points. */
  readonly path: string;
  readonly onChange: (points: RatingPoint[]) => void;
}

const fields = ['hours', 'capacityAh', 'endVoltageV'] as const;
const fewest = 2;
const most = 12;

/** The maker's rating table: discharge time, capacity and where he stopped. */
export const RatingPointsTable = ({ points, path, onChange }: RatingPointsTableProps) => {
  const text = useText(ratingTexts);
  const language = useSettings((state) => state.language);
  const titleOf = (field: string): string => fieldWords(`${path}.0.${field}`, language).title;
  const add = (): void => {
    const shortest = points.toSorted((one, other) => one.hours - other.hours)[0];
    if (shortest === undefined) return;
    onChange([...points, { ...shortest, hours: Number((shortest.hours / 2).toPrecision(3)) }]);
  };
  return (
    <>
      <DataTable
        caption={text.kinds.points}
        hideCaption
        columns={[
          { id: 'at', label: '' },
          ...fields.map((field) => ({ id: field, label: titleOf(field) })),
          { id: 'remove', label: '' },
        ]}
        rows={points.map((_, at) => ({
          id: String(at),
          cells: {
            at: <span className="faint">{at + 1}</span>,
            ...Object.fromEntries(
              fields.map((field) => [
                field,
                <QuantityField
                  key={field}
                  path={`${path}.${at}.${field}`}
                  label={`${titleOf(field)}, ${text.point(at + 1)}`}
                  hideLabel
                />,
              ]),
            ),
            remove: (
              <IconButton
                icon="trash"
                label={text.removePoint(at + 1)}
                isDisabled={points.length <= fewest}
                onPress={() => onChange(points.filter((__, other) => other !== at))}
              />
            ),
          },
        }))}
      />
      <div>
        <Button icon="plus" isDisabled={points.length >= most} onPress={add}>
          {text.addPoint}
        </Button>
      </div>
    </>
  );
};
