import { memo, useDeferredValue, type ReactNode } from 'react';
import { FieldHelp } from '../../controls/FieldFrame.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { controlTexts } from '../../text/controls.ts';
import { useText } from '../../text/use-text.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { trimDifferences } from '#core/plan/trim-differences.ts';
import { edit } from '../../state/plan-store.ts';
import { setField } from '../../state/plan-path.ts';
import { assumedFor, assumedSpread } from './assumed.ts';
import type { Option } from '#core/plan/schema/option.ts';

interface MatrixRowProps {
  readonly label: string;
  readonly help?: string | undefined;
  /** Under the help: how to say that it is not known. */
  readonly helpExtra?: ReactNode;
  readonly renderCell: (option: Option, index: number) => ReactNode;
}

/** Kept as it is while its option is: an edit changes one of up to twelve. */
const MatrixCell = memo(function MatrixCell({
  option,
  index,
  renderCell,
}: {
  readonly option: Option;
  readonly index: number;
  readonly renderCell: MatrixRowProps['renderCell'];
}) {
  return <td>{renderCell(option, index)}</td>;
});

/**
 * One field across all options: the name once, a control in each column. Fields follow an edit by themselves and at once;
 * what else stands in the cells may come after the figures.
 */
export const MatrixRow = ({ label, help, helpExtra, renderCell }: MatrixRowProps) => {
  const options = useDeferredValue(usePlan((plan) => plan.options));
  return (
    <tr>
      <th scope="row">
        <span className="matrix-label">
          {label}
          {help === undefined ? null : <FieldHelp label={label} help={help} extra={helpExtra} />}
        </span>
      </th>
      {options.map((option, index) => (
        <MatrixCell key={option.id} option={option} index={index} renderCell={renderCell} />
      ))}
    </tr>
  );
};

interface QuantityRowProps {
  /** Path inside the option, e.g. `pack.block.capacityAh`. */
  readonly path: string;
  readonly label?: string;
  readonly emptyWords?: string;
}

/** Fields that shape the pack: blocks it no longer has must go with them. */
const shaping = new Set(['pack.seriesCount', 'pack.parallelCount', 'pack.block.cellGroups']);

/** A number of every option. Options that lack the part it belongs to show a dash. */
export const QuantityRow = ({ path, label, emptyWords }: QuantityRowProps) => {
  const words = useFieldWords(`options.0.${path}`);
  const language = useSettings((state) => state.language);
  const text = useText(controlTexts);
  const title = label ?? words.title;
  const field = path.slice(path.lastIndexOf('.') + 1);
  const isAssumed = usePlan((plan) =>
    plan.options.some((option) => assumedFor(field, option, language) !== undefined),
  );
  return (
    <MatrixRow
      label={title}
      help={words.help}
      {...(isAssumed ? { helpExtra: <p>{text.emptyWhenUnknown}</p> } : {})}
      renderCell={(option, index) => (
        <QuantityField
          path={`options.${index}.${path}`}
          label={`${title}, ${option.name}`}
          hideLabel
          assumed={assumedFor(field, option, language)}
          assumedSpread={assumedSpread(field, option, language)}
          {...(emptyWords === undefined ? {} : { emptyWords })}
          {...(shaping.has(path)
            ? {
                onCommit: (value, key) =>
                  edit(
                    title,
                    (plan) => {
                      const target = plan.options[index];
                      if (target === undefined) return;
                      setField(plan, `options.${index}.${path}`, value);
                      Object.assign(target.pack, trimDifferences(target.pack));
                    },
                    key,
                  ),
              }
            : {})}
        />
      )}
    />
  );
};
