import { fetched } from '../../controls/Fetched.tsx';
import { useDocument } from '../../state/document-store.ts';
import { CommandPalette } from './CommandPalette.tsx';

const AboutDialog = fetched(async () => (await import('./AboutDialog.tsx')).AboutDialog);
const ChangedOutsideDialog = fetched(
  async () => (await import('./question-dialogs.tsx')).ChangedOutsideDialog,
);
const FailureDialog = fetched(async () => (await import('./FailureDialog.tsx')).FailureDialog);
/** Brings every formula of the catalogue with it. */
const FormulaDialog = fetched(async () => (await import('./FormulaDialog.tsx')).FormulaDialog);
const NewPlanDialog = fetched(async () => (await import('./NewPlanDialog.tsx')).NewPlanDialog);
const RecoveryDialog = fetched(async () => (await import('./RecoveryDialog.tsx')).RecoveryDialog);
const SampleDialog = fetched(async () => (await import('./SampleDialog.tsx')).SampleDialog);
const ShortcutDialog = fetched(async () => (await import('./ShortcutDialog.tsx')).ShortcutDialog);
const UnsavedDialog = fetched(async () => (await import('./question-dialogs.tsx')).UnsavedDialog);

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
      // Comes with the page: what is typed right behind its shortcut must not be lost.
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
      return <FormulaDialog />;
  }
};
