import { useState } from 'react';
import { Button as Base } from 'react-aria-components';
import type { FigureClass } from '#core/library/part.ts';
import { Dialog } from '../../controls/Dialog.tsx';
import { TextInput } from '../../controls/TextField.tsx';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import './parts.css';

export interface PickablePart<T> {
  readonly id: string;
  readonly group: string;
  readonly name: string;
  readonly value: T;
  readonly sourceClass: FigureClass | null;
}

interface PartPickerProps<T> {
  readonly title: string;
  readonly parts: readonly PickablePart<T>[];
  /** The figures that tell parts apart, in a line. */
  readonly describe: (value: T) => string;
  readonly onPick: (value: T) => void;
  readonly onClose: () => void;
}

/** Library and own parts by group, with a filter. Taking one copies its figures into the plan. */
export const PartPicker = <T,>({ title, parts, describe, onPick, onClose }: PartPickerProps<T>) => {
  const text = useText(packsTexts);
  const [filter, setFilter] = useState('');
  const words = filter.toLowerCase().split(/\s+/);
  const found = parts.filter((part) => {
    const line = `${part.group} ${part.name} ${describe(part.value)}`.toLowerCase();
    return words.every((word) => line.includes(word));
  });
  const groups = [...new Set(found.map(({ group }) => group))];
  return (
    <Dialog title={title} isOpen onClose={onClose} size="large">
      <p className="soft part-lead">{text.classLead}</p>
      <div
        onInput={(event) => {
          if (event.target instanceof HTMLInputElement) setFilter(event.target.value);
        }}
      >
        <TextInput label={text.partFilter} value={filter} onCommit={setFilter} autoFocus />
      </div>
      {found.length === 0 ? <p className="soft part-none">{text.partNone}</p> : null}
      {groups.map((group) => (
        <section key={group} className="part-group">
          <h3 className="part-group-name">{group}</h3>
          <ul className="part-list">
            {found
              .filter((part) => part.group === group)
              .map((part) => (
                <li key={part.id}>
                  <Base
                    className="part"
                    onPress={() => {
                      onPick(structuredClone(part.value));
                      onClose();
                    }}
                  >
                    <span className="part-name">{part.name}</span>
                    <span className="part-figures">{describe(part.value)}</span>
                    <span className="part-class">
                      {part.sourceClass === null ? text.partOwn : text.classWords[part.sourceClass]}
                    </span>
                  </Base>
                </li>
              ))}
          </ul>
        </section>
      ))}
    </Dialog>
  );
};
