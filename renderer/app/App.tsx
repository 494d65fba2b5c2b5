import { useState } from 'react';
import { fetched } from '../controls/Fetched.tsx';
import { Toasts } from '../controls/Toasts.tsx';
import { useFindingsView } from '../state/findings-view.ts';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';
import { DialogHost } from './dialogs/DialogHost.tsx';
import { DropTarget } from './DropTarget.tsx';
import { HeadlineStrip } from './HeadlineStrip.tsx';
import { PlaceFrame } from './PlaceFrame.tsx';
import { StatusLine } from './StatusLine.tsx';
import { TopBar } from './TopBar.tsx';
import './shell.css';

const FindingsDrawer = fetched(async () => (await import('./FindingsDrawer.tsx')).FindingsDrawer);

/** The window: plan and places, the options' figures, the place, the status. */
export const App = () => {
  const text = useText(appTexts);
  const areFindingsOpen = useFindingsView((state) => state.isOpen);
  // Once it has been open it stays, so that it can close in its own way.
  const [hasDrawer, setDrawer] = useState(false);
  if (areFindingsOpen && !hasDrawer) setDrawer(true);
  return (
    <>
      <a className="skip-link" href="#place">
        {text.skip}
      </a>
      <div className="shell">
        <TopBar />
        <HeadlineStrip />
        <PlaceFrame />
        <StatusLine />
      </div>
      {hasDrawer ? <FindingsDrawer /> : null}
      <DialogHost />
      <DropTarget />
      <Toasts />
    </>
  );
};
