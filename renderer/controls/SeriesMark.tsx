import { seriesLook, type MarkerShape } from '../styles/series.ts';
import './series-mark.css';

const markers: Readonly<Record<MarkerShape, string>> = {
  disc: 'M16 4.5a3.5 3.5 0 1 0 0 7 3.5 3.5 0 0 0 0-7z',
  square: 'M12.5 4.5h7v7h-7z',
  triangle: 'M16 3.5 20.5 11.5h-9z',
  diamond: 'M16 3 21 8l-5 5-5-5z',
  cross: 'M13 5l6 6m0-6-6 6',
};

/** Line, dash and marker of an option, the same in strip, tables and charts. */
export const SeriesMark = ({ index }: { readonly index: number }) => {
  const { number, dash, marker } = seriesLook(index);
  const colour = `var(--series-${number})`;
  return (
    <svg className="series-mark" viewBox="0 0 32 16" aria-hidden="true" focusable="false">
      <path d="M1 8h30" stroke={colour} strokeWidth="2.2" strokeDasharray={dash.join(' ')} />
      <path
        d={markers[marker]}
        fill={marker === 'cross' ? 'none' : colour}
        stroke={marker === 'cross' ? colour : 'none'}
        strokeWidth="2"
      />
    </svg>
  );
};
