import { Radio, RadioGroup } from 'react-aria-components';

interface QuantityTabsProps<T extends string> {
  readonly label: string;
  readonly selected: T;
  readonly entries: readonly { readonly id: T; readonly label: string }[];
  readonly onSelect: (id: T) => void;
}

/** One quantity of several, chosen in a row. */
export const QuantityTabs = <T extends string>(props: QuantityTabsProps<T>) => (
  <RadioGroup
    className="segments"
    orientation="horizontal"
    aria-label={props.label}
    value={props.selected}
    onChange={(id) => props.onSelect(id as T)}
  >
    {props.entries.map(({ id, label }) => (
      <Radio key={id} value={id} className="tab">
        {label}
      </Radio>
    ))}
  </RadioGroup>
);
