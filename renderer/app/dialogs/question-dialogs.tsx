import { Button } from '../../controls/Button.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { documentTexts } from '../../text/documents.ts';
import { useText } from '../../text/use-text.ts';

/** Before a plan with unsaved changes goes: save, discard, stay. */
export const UnsavedDialog = ({
  answer,
}: {
  readonly answer: (choice: 'save' | 'discard' | 'stay') => void;
}) => {
  const text = useText(documentTexts);
  const name = usePlan((plan) => plan.name);
  return (
    <Dialog
      title={text.unsavedTitle(name)}
      isOpen
      mustAnswer
      onClose={() => answer('stay')}
      actions={
        <>
          <Button onPress={() => answer('discard')}>{text.discard}</Button>
          <Button onPress={() => answer('stay')}>{text.stay}</Button>
          <Button look="main" autoFocus onPress={() => answer('save')}>
            {text.save}
          </Button>
        </>
      }
    >
      <p>{text.unsavedLead}</p>
    </Dialog>
  );
};

/** The file was written by another program: whose version stays? */
export const ChangedOutsideDialog = ({
  answer,
}: {
  readonly answer: (choice: 'replace' | 'read' | 'stay') => void;
}) => {
  const text = useText(documentTexts);
  return (
    <Dialog
      title={text.changedTitle}
      isOpen
      mustAnswer
      onClose={() => answer('stay')}
      actions={
        <>
          <Button onPress={() => answer('read')}>{text.readAgain}</Button>
          <Button onPress={() => answer('replace')}>{text.replace}</Button>
          <Button look="main" autoFocus onPress={() => answer('stay')}>
            {text.stay}
          </Button>
        </>
      }
    >
      <p>{text.changedLead}</p>
    </Dialog>
  );
};
