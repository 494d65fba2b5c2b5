import { useEffect, useRef } from 'react';
import { fieldReached, usePlace } from '../state/place-store.ts';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { Fetched } from '../controls/Fetched.tsx';
import { findField } from './find-field.ts';
import { ProblemBanner } from './ProblemBanner.tsx';
import { places } from './places.ts';

/** The place on screen. A link to a field waits here until the field is there, then gives it the focus. */
export const PlaceFrame = () => {
  const text = useText(appTexts);
  const current = usePlace((state) => state.place);
  const wanted = usePlace((state) => state.wantedField);
  const place = places.find(({ id }) => id === current) ?? places[0];
  const frame = useRef<HTMLElement>(null);

  useEffect(() => {
    if (wanted === null) return undefined;
    const begun = performance.now();
    let held = 0;
    const look = (): void => {
      // A dialog that closes gives the focus back where it came from; only after that is it ours.
      const target =
        document.querySelector('.overlay, .popover') === null
          ? findField(frame.current, wanted)
          : null;
      if (target !== null && document.activeElement !== target) {
        target.scrollIntoView({ block: 'center' });
        target.focus();
        held = 0;
      } else if (target !== null) held += 1;
      if (held > 1 || performance.now() - begun > 3000) {
        clearInterval(timer);
        fieldReached();
      }
    };
    const timer = setInterval(look, 60);
    return () => clearInterval(timer);
  }, [wanted]);

  if (place === undefined) return null;
  return (
    // The key begins each place at its top.
    <main
      key={place.id}
      className="place"
      id="place"
      ref={frame}
      tabIndex={-1}
      aria-label={text.places[place.id]}
    >
      <ProblemBanner />
      <ErrorBoundary>
        <Fetched
          part={place.body}
          props={{}}
          waiting={<p className="place-loading">{text.loading}</p>}
        />
      </ErrorBoundary>
    </main>
  );
};
