import { Toasts } from '../controls/Toasts.tsx';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';
import { DialogHost } from './dialogs/DialogHost.tsx';
import { DropTarget } from './DropTarget.tsx';
import { FindingsDrawer } from './FindingsDrawer.tsx';
import { HeadlineStrip } from './HeadlineStrip.tsx';
import { PlaceFrame } from './PlaceFrame.tsx';
import { StatusLine } from './StatusLine.tsx';
import { TopBar } from './TopBar.tsx';
import './shell.css';

/** The window: plan and places, the options' figures, the place, the status. */
export const App = () => {
  const text = useText(appTexts);
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
      <FindingsDrawer />
      <DialogHost />
      <DropTarget />
      <Toasts />
    </>
  );
};
