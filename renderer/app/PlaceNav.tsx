import { Link } from 'react-aria-components';
import { goTo, usePlace } from '../state/place-store.ts';
import { useStudy } from '../state/shown-study.ts';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';
import { SeverityMark } from '../controls/SeverityMark.tsx';
import { worstAt } from './worst-at.ts';
import { places } from './places.ts';

/** The places as terminals on one conductor, in the order of the job; a terminal shows the worst finding that stands there. */
export const PlaceNav = () => {
  const text = useText(appTexts);
  const current = usePlace((state) => state.place);
  const { study } = useStudy();
  return (
    <nav className="place-nav" aria-label={text.placesLabel}>
      <ol className="place-list">
        {places.map(({ id }) => {
          const worst = worstAt(study?.findings ?? [], id);
          return (
            <li key={id} className="place-item">
              <Link
                className="place-link"
                data-place={id}
                {...(current === id ? { 'aria-current': 'page' as const } : {})}
                onPress={() => goTo(id)}
              >
                <span className="place-terminal" aria-hidden="true">
                  {worst === null ? null : <SeverityMark severity={worst} />}
                </span>
                {text.places[id]}
                {worst === null ? null : (
                  <span className="only-spoken">{`, ${text.severityWord[worst]}`}</span>
                )}
              </Link>
            </li>
          );
        })}
      </ol>
    </nav>
  );
};
