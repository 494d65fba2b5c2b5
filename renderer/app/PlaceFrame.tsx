import { Suspense, useEffect, useRef } from 'react';
import { fieldReached, usePlace } from '../state/place-store.ts';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';
import { ErrorBoundary } from './ErrorBoundary.tsx';
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
    const look = (): void => {
      const target = findField(frame.current, wanted);
      if (target !== null) {
        target.scrollIntoView({ block: 'center' });
        target.focus();
      }
      if (target !== null || performance.now() - begun > 2000) {
        clearInterval(timer);
        fieldReached();
      }
    };
    const timer = setInterval(look, 60);
    return () => clearInterval(timer);
  }, [wanted]);

  if (place === undefined) return null;
  const Body = place.body;
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
        <Suspense fallback={<p className="place-loading">{text.loading}</p>}>
          <Body />
        </Suspense>
      </ErrorBoundary>
    </main>
  );
};
