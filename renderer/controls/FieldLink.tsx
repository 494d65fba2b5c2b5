import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { placeOfField } from '../app/place-of-field.ts';
import { goToField } from '../state/place-store.ts';

interface FieldLinkProps {
  readonly field: string;
  readonly children: ReactNode;
  readonly onFollow?: () => void;
}

/** Leads to the plan field of that path, wherever it stands. */
export const FieldLink = ({ field, children, onFollow }: FieldLinkProps) => (
  <Button
    className="link"
    onPress={() => {
      goToField(placeOfField(field), field);
      onFollow?.();
    }}
  >
    {children}
  </Button>
);
