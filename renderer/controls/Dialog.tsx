import type { ReactNode } from 'react';
import { Dialog as Base, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { controlTexts } from '../text/controls.ts';
import { useText } from '../text/use-text.ts';
import { IconButton } from './Button.tsx';
import './dialog.css';

interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Buttons in the foot, the main one last. */
  readonly actions?: ReactNode;
  readonly size?: 'small' | 'large' | 'wide';
  /** A question that must be answered: no way out but its buttons. */
  readonly mustAnswer?: boolean;
}

/** A window in the window: keeps the focus while open and gives it back when closed. */
export const Dialog = (props: DialogProps) => {
  const { title, isOpen, onClose, children, actions, size = 'small', mustAnswer = false } = props;
  const text = useText(controlTexts);
  return (
    <ModalOverlay
      className="overlay"
      isOpen={isOpen}
      isDismissable={!mustAnswer}
      isKeyboardDismissDisabled={mustAnswer}
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
    >
      <Modal className={`dialog dialog-${size}`}>
        <Base className="dialog-body" role={mustAnswer ? 'alertdialog' : 'dialog'}>
          <header className="dialog-head">
            <Heading slot="title" className="dialog-title">
              {title}
            </Heading>
            {mustAnswer ? null : <IconButton icon="close" label={text.close} onPress={onClose} />}
          </header>
          <div className="dialog-content">{children}</div>
          {actions === undefined ? null : <footer className="dialog-foot">{actions}</footer>}
        </Base>
      </Modal>
    </ModalOverlay>
  );
};

/** A dialog at the side of the window, for lists that are read beside the work. */
export const Drawer = ({ title, isOpen, onClose, children }: Omit<DialogProps, 'size'>) => {
  const text = useText(controlTexts);
  return (
    <ModalOverlay
      className="overlay overlay-side"
      isOpen={isOpen}
      isDismissable
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
    >
      <Modal className="drawer">
        <Base className="dialog-body">
          <header className="dialog-head">
            <Heading slot="title" className="dialog-title">
              {title}
            </Heading>
            <IconButton icon="close" label={text.close} onPress={onClose} />
          </header>
          <div className="dialog-content">{children}</div>
        </Base>
      </Modal>
    </ModalOverlay>
  );
};
