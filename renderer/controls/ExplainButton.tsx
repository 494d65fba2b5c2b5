import { useRef, useState, type ReactNode } from 'react';
import { Dialog, Heading, Popover } from 'react-aria-components';

interface ExplainButtonProps {
  readonly className: string;
  /** Spoken name of the button, where its content is none. */
  readonly spoken?: string;
  readonly title: string;
  /** What the button shows. */
  readonly children: ReactNode;
  /** What it explains; made only when asked for. */
  readonly renderExplanation: () => ReactNode;
}

/**
 * A button that opens an explanation. Screens hold hundreds of them and an edit renders most of them again, so one that
 * is closed is a plain button and nothing else; the dialog comes with the first press.
 */
export const ExplainButton = (props: ExplainButtonProps) => {
  const { className, spoken, title, children, renderExplanation } = props;
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  return (
    <>
      <button
        ref={button}
        type="button"
        className={className}
        aria-expanded={isOpen}
        {...(spoken === undefined ? {} : { 'aria-label': spoken })}
        onClick={() => setOpen(!isOpen)}
      >
        {children}
      </button>
      {isOpen ? (
        <Popover
          className="popover"
          placement="bottom start"
          triggerRef={button}
          isOpen
          onOpenChange={setOpen}
        >
          <Dialog className="popover-body">
            <Heading slot="title" className="popover-title">
              {title}
            </Heading>
            {renderExplanation()}
          </Dialog>
        </Popover>
      ) : null}
    </>
  );
};
