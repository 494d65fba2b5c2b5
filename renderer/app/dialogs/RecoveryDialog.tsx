import { useState } from 'react';
import { Button } from '../../controls/Button.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { mayLeave, take } from '../../state/document-actions.ts';
import { closeDialog, theHost } from '../../state/document-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { documentTexts } from '../../text/documents.ts';
import { localeOf } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import type { RecoveryCopy } from '#core/shell/documents.ts';

/** Puts the copy in place as an unsaved plan. */
const open = async (id: string): Promise<void> => {
  closeDialog();
  if (await mayLeave()) take(await theHost().takeRecoveryCopy(id), true);
};

/** Copies of unsaved plans, each with its time; nothing comes back by itself. */
export const RecoveryDialog = ({ copies }: { readonly copies: readonly RecoveryCopy[] }) => {
  const text = useText(documentTexts);
  const language = useSettings((state) => state.language);
  const [left, setLeft] = useState(copies);
  const time = new Intl.DateTimeFormat(localeOf(language), {
    dateStyle: 'medium',
    timeStyle: 'short',
  });
  const drop = (id: string): void => {
    void theHost().discardRecoveryCopy(id);
    const rest = left.filter((copy) => copy.id !== id);
    setLeft(rest);
    if (rest.length === 0) closeDialog();
  };
  return (
    <Dialog
      title={text.recoveryTitle}
      isOpen
      onClose={closeDialog}
      actions={<Button onPress={closeDialog}>{text.later}</Button>}
    >
      <p>{text.recoveryLead}</p>
      <ul className="choice-list">
        {left.map((copy) => (
          <li key={copy.id} className="choice-row">
            <div>
              <b>{copy.name}</b>
              <div className="soft">
                {copy.state === 'damaged'
                  ? text.recoveryDamaged
                  : text.savedAt(time.format(new Date(copy.savedAt)))}
              </div>
            </div>
            <div className="choice-actions">
              <Button onPress={() => drop(copy.id)}>{text.throwAway}</Button>
              <Button
                look="main"
                isDisabled={copy.state === 'damaged'}
                onPress={() => void open(copy.id)}
              >
                {text.take}
              </Button>
            </div>
          </li>
        ))}
      </ul>
    </Dialog>
  );
};
