import { useState, type ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { Icon } from '../../controls/icons.tsx';
import { usePlace } from '../../state/place-store.ts';

interface MatrixGroupProps {
  readonly title: string;
  readonly columns: number;
  readonly isOpenAtFirst?: boolean;
  /** Part of the path of every field inside: a link to one of them opens the group. */
  readonly holds: RegExp;
  readonly children: ReactNode;
}

/** Rows that belong together, under a head that folds them. */
export const MatrixGroup = (props: MatrixGroupProps) => {
  const { title, columns, isOpenAtFirst = true, holds, children } = props;
  const [isOpen, setOpen] = useState(isOpenAtFirst);
  const wanted = usePlace((state) => state.wantedField);
  const [answered, setAnswered] = useState<string | null>(null);
  if (wanted !== answered) {
    setAnswered(wanted);
    if (wanted !== null && holds.test(wanted)) setOpen(true);
  }
  return (
    <tbody>
      <tr className="matrix-group">
        <th scope="rowgroup" colSpan={columns + 1}>
          <Button
            className="disclosure-button"
            aria-expanded={isOpen}
            onPress={() => setOpen(!isOpen)}
          >
            <Icon name="right" />
            {title}
          </Button>
        </th>
      </tr>
      {isOpen ? children : null}
    </tbody>
  );
};
