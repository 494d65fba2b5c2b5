import { Button as Base } from 'react-aria-components';
import { sampleAbout, sampleNames } from '#core/plan/samples/index.ts';
import { Dialog } from '../../controls/Dialog.tsx';
import { openSample } from '../../state/document-actions.ts';
import { closeDialog } from '../../state/document-store.ts';
import { documentTexts } from '../../text/documents.ts';
import { useText } from '../../text/use-text.ts';

export const SampleDialog = () => {
  const text = useText(documentTexts);
  return (
    <Dialog title={text.sampleTitle} isOpen onClose={closeDialog}>
      <p className="soft">{text.sampleLead}</p>
      <ul className="choice-list">
        {sampleNames.map((name) => (
          <li key={name}>
            <Base
              className="choice-row choice-press"
              onPress={() => {
                closeDialog();
                void openSample(name);
              }}
            >
              <span>
                <b>{text.samples[name]?.name ?? name}</b>
                <span className="soft choice-about">
                  {text.samples[name]?.about ?? sampleAbout(name)}
                </span>
              </span>
            </Base>
          </li>
        ))}
      </ul>
    </Dialog>
  );
};
