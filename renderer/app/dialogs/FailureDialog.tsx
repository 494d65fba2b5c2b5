import { Button } from '../../controls/Button.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { closeDialog } from '../../state/document-store.ts';
import { documentTexts } from '../../text/documents.ts';
import { useText } from '../../text/use-text.ts';
import type { HostFailure } from '#core/shell/failure.ts';

interface FailureDialogProps {
  readonly failure: HostFailure;
  readonly during: 'open' | 'save' | 'export';
}

/** What went wrong with a file, in which field, and the way out. */
export const FailureDialog = ({ failure, during }: FailureDialogProps) => {
  const text = useText(documentTexts);
  const { code, name, field, problem, remedy } = failure;
  return (
    <Dialog
      title={text.titles[during]}
      isOpen
      onClose={closeDialog}
      actions={
        <Button look="main" onPress={closeDialog} autoFocus>
          {text.ok}
        </Button>
      }
    >
      <p>{problem ?? text.failure[code]}</p>
      {remedy === undefined ? null : <p>{remedy}</p>}
      <dl className="facts">
        {name === undefined ? null : (
          <>
            <dt>{text.file}</dt>
            <dd>{name}</dd>
          </>
        )}
        {field === undefined || field === '' ? null : (
          <>
            <dt>{text.field}</dt>
            <dd className="code">{field}</dd>
          </>
        )}
      </dl>
      {during === 'open' ? <p className="soft">{text.untouched}</p> : null}
    </Dialog>
  );
};
