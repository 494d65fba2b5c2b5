import { useState, type ReactNode } from 'react';
import { Button, Disclosure as Base, DisclosurePanel, Heading } from 'react-aria-components';
import { usePlace } from '../state/place-store.ts';
import { Icon } from './icons.tsx';
import './section.css';

interface DisclosureProps {
  readonly title: string;
  /** What is inside, in a few words, at the right. */
  readonly note?: string;
  readonly children: ReactNode;
  readonly isOpenAtFirst?: boolean;
  /** Path of the plan fields inside: a link to one of them opens this. */
  readonly holds?: string;
}

/** Detail that most people do not need at first. */
export const Disclosure = ({
  title,
  note,
  children,
  isOpenAtFirst = false,
  holds,
}: DisclosureProps) => {
  const [isOpen, setOpen] = useState(isOpenAtFirst);
  const wanted = usePlace((state) => state.wantedField);
  const [answered, setAnswered] = useState<string | null>(null);
  if (wanted !== answered) {
    setAnswered(wanted);
    if (holds !== undefined && wanted?.startsWith(holds) === true) setOpen(true);
  }
  return (
    <Base className="disclosure" isExpanded={isOpen} onExpandedChange={setOpen}>
      <Heading level={3}>
        <Button slot="trigger" className="disclosure-button">
          <Icon name="right" />
          {title}
          {note === undefined ? null : <span className="disclosure-note">{note}</span>}
        </Button>
      </Heading>
      <DisclosurePanel>
        <div className="disclosure-body">{children}</div>
      </DisclosurePanel>
    </Base>
  );
};
