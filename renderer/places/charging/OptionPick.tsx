import type { ReactNode } from 'react';
import { Radio, RadioGroup } from 'react-aria-components';
import './option-pick.css';

interface OptionPickProps {
  readonly label: string;
  readonly selected: string;
  readonly entries: readonly {
    readonly id: string;
    readonly label: string;
    readonly mark: ReactNode;
  }[];
  readonly onSelect: (id: string) => void;
}

/** The option the place is about. */
export const OptionPick = ({ label, selected, entries, onSelect }: OptionPickProps) => (
  <RadioGroup
    className="option-pick"
    orientation="horizontal"
    aria-label={label}
    value={selected}
    onChange={onSelect}
  >
    {entries.map((entry) => (
      <Radio key={entry.id} value={entry.id} className="option-pick-entry">
        {entry.mark}
        {entry.label}
      </Radio>
    ))}
  </RadioGroup>
);
