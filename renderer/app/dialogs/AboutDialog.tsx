import { useEffect, useState } from 'react';
import { Disclosure } from '../../controls/Disclosure.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { closeDialog, theHost } from '../../state/document-store.ts';
import { menuTexts } from '../../text/menu.ts';
import { useText } from '../../text/use-text.ts';
import type { AboutData } from '#core/shell/documents.ts';

export const AboutDialog = () => {
  const text = useText(menuTexts);
  const [about, setAbout] = useState<AboutData | null>(null);
  useEffect(() => {
    let isHere = true;
    void theHost()
      .about()
      .then((data) => {
        if (isHere) setAbout(data);
      });
    return () => {
      isHere = false;
    };
  }, []);
  return (
    <Dialog title="Cellwain" isOpen onClose={closeDialog}>
      <p>{text.aboutLead}</p>
      <p className="soft">{text.aboutCare}</p>
      {about === null ? null : (
        <>
          <dl className="facts">
            <dt>{text.version}</dt>
            <dd>{about.version}</dd>
            {Object.entries(about.runtimes).map(([name, version]) => (
              <div key={name} className="facts-pair">
                <dt>{name}</dt>
                <dd>{version}</dd>
              </div>
            ))}
          </dl>
          <Disclosure title={text.licences} note={String(about.packages.length)}>
            {about.packages.map((entry) => (
              <details key={entry.name} className="licence">
                <summary>{`${entry.name} ${entry.version}, ${entry.licence}`}</summary>
                <pre className="licence-text" tabIndex={0}>
                  {entry.text}
                </pre>
              </details>
            ))}
          </Disclosure>
        </>
      )}
    </Dialog>
  );
};
