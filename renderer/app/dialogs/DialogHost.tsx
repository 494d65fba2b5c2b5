import { useDocument } from '../../state/document-store.ts';
import { Fetched, fetchedPart } from '../Fetched.tsx';
import { AboutDialog } from './AboutDialog.tsx';
import { ChangedOutsideDialog, UnsavedDialog } from './question-dialogs.tsx';
import { CommandPalette } from './CommandPalette.tsx';
import { FailureDialog } from './FailureDialog.tsx';
import { NewPlanDialog } from './NewPlanDialog.tsx';
import { RecoveryDialog } from './RecoveryDialog.tsx';
import { SampleDialog } from './SampleDialog.tsx';
import { ShortcutDialog } from './ShortcutDialog.tsx';

/** Brings every formula of the catalogue with it. */
const formulaDialog = fetchedPart(async () => (await import('./FormulaDialog.tsx')).FormulaDialog);

/** The one dialog that stands open, if any. */
export const DialogHost = () => {
  const dialog = useDocument((state) => state.dialog);
  switch (dialog?.kind) {
    case undefined:
      return null;
    case 'failure':
      return <FailureDialog failure={dialog.failure} during={dialog.during} />;
    case 'unsaved':
      return <UnsavedDialog answer={dialog.answer} />;
    case 'changed-outside':
      return <ChangedOutsideDialog answer={dialog.answer} />;
    case 'recovery':
      return <RecoveryDialog copies={dialog.copies} />;
    case 'palette':
      return <CommandPalette />;
    case 'shortcuts':
      return <ShortcutDialog />;
    case 'samples':
      return <SampleDialog />;
    case 'new-plan':
      return <NewPlanDialog />;
    case 'about':
      return <AboutDialog />;
    case 'formulas':
      return <Fetched part={formulaDialog} props={{}} />;
  }
};
