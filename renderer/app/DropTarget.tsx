import { useEffect, useState } from 'react';
import { openDroppedFile } from '../state/document-actions.ts';
import { showToast } from '../state/toast-store.ts';
import { documentTexts } from '../text/documents.ts';
import { textNow, useText } from '../text/use-text.ts';

/** A plan file dropped anywhere into the window opens. */
export const DropTarget = () => {
  const text = useText(documentTexts);
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    const hasFile = (event: DragEvent): boolean =>
      event.dataTransfer?.types.includes('Files') === true;
    const over = (event: DragEvent): void => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent): void => {
      // A place may take a file for itself, a log for instance.
      if (event.defaultPrevented || !hasFile(event)) return setOver(false);
      event.preventDefault();
      setOver(false);
      const files = [...(event.dataTransfer?.files ?? [])];
      const [file] = files;
      if (file === undefined || files.length !== 1) showToast(textNow(documentTexts).notText);
      else void openDroppedFile(file);
    };
    addEventListener('dragover', over);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, []);
  return isOver ? <div className="drop-hint">{text.dropHere}</div> : null;
};
