import type { CoordinationDrawing } from '#core/wiring/index.ts';

interface TimeCurrentChartProps {
  readonly drawing: CoordinationDrawing;
  /** Title and what the chart says, for those who do not see it. */
  readonly words: string;
}

/** Time against current, both logarithmic: the fuse as a band, the wire as two lines, currents as upright marks. */
export const TimeCurrentChart = ({ drawing, words }: TimeCurrentChartProps) => (
  <figure className="time-current">
    <svg viewBox={`0 0 ${drawing.width} ${drawing.height}`} role="img" aria-label={words}>
      {drawing.shapes.map((shape, index) =>
        // The chart is drawn anew as a whole: its order is its identity.
        shape.kind === 'path' ? (
          <path key={index} className={`tc-${shape.role}`} d={shape.d} />
        ) : (
          <text
            key={index}
            className={`tc-${shape.role}`}
            x={shape.x}
            y={shape.y}
            textAnchor={shape.anchor}
          >
            {shape.text}
          </text>
        ),
      )}
    </svg>
  </figure>
);
