import { useId } from 'react';
import { Button, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';
import { editField, readField } from '../state/plan-path.ts';
import { usePlan } from '../state/plan-store.ts';
import { useFieldWords } from '../text/field-words.ts';
import { FieldFrame } from './FieldFrame.tsx';
import { Icon } from './icons.tsx';

export interface ChoiceEntry {
  readonly value: string;
  readonly label: string;
}

interface ChoiceProps {
  readonly label: string;
  readonly value: string;
  readonly entries: readonly ChoiceEntry[];
  readonly onChoose: (value: string) => void;
  readonly help?: string | undefined;
  readonly hideLabel?: boolean | undefined;
  readonly field?: string | undefined;
}

/** One of a few. */
export const Choice = (props: ChoiceProps) => {
  const { label, value, entries, onChoose, help, hideLabel = false, field } = props;
  const id = useId();
  return (
    <FieldFrame id={id} label={label} help={help} hideLabel={hideLabel}>
      <Select
        aria-label={label}
        selectedKey={value}
        onSelectionChange={(key) => {
          if (key !== null && key !== value) onChoose(String(key));
        }}
      >
        <Button className="choice" id={id} data-field={field}>
          <SelectValue className="choice-value" />
          <Icon name="down" />
        </Button>
        <Popover className="popover">
          <ListBox className="list">
            {entries.map((entry) => (
              <ListBoxItem
                key={entry.value}
                id={entry.value}
                className="list-item"
                textValue={entry.label}
              >
                {entry.label}
              </ListBoxItem>
            ))}
          </ListBox>
        </Popover>
      </Select>
    </FieldFrame>
  );
};

interface ChoiceFieldProps {
  readonly path: string;
  readonly entries: readonly ChoiceEntry[];
  readonly label?: string;
  readonly hideLabel?: boolean;
  readonly onChoose?: (value: string) => void;
}

/** A choice of the plan. */
export const ChoiceField = ({ path, entries, label, hideLabel, onChoose }: ChoiceFieldProps) => {
  const value = usePlan((plan) => readField(plan, path));
  const words = useFieldWords(path);
  if (typeof value !== 'string') return null;
  const title = label ?? words.title;
  return (
    <Choice
      label={title}
      help={words.help}
      value={value}
      entries={entries}
      hideLabel={hideLabel}
      field={path}
      onChoose={onChoose ?? ((next) => editField(title, path, next))}
    />
  );
};
