import type { KeyboardEvent } from 'react';
import type { Wiring } from '#core/plan/schema/wiring.ts';
import type { DiagramShape, OneLineDiagram } from '#core/wiring/index.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

interface DiagramViewProps {
  readonly diagram: OneLineDiagram;
  readonly title: string;
  readonly wiring: Wiring;
  readonly selected: string | null;
  readonly onSelect: (branchId: string) => void;
}

/** The drawing; each branch is a button. */
export const DiagramView = ({ diagram, title, wiring, selected, onSelect }: DiagramViewProps) => {
  const text = useText(wiringTexts).diagram;
  const { width, height, shapes, targets } = diagram;
  return (
    <div
      className="diagram-scroll"
      role="group"
      aria-label={`${title}. ${diagram.summary}`}
      tabIndex={0}
    >
      {/* Fills a wide window, shrinks a little in a narrow one, then scrolls: the texts stay legible. */}
      <svg
        className="diagram"
        viewBox={`0 0 ${width} ${height}`}
        style={{ minWidth: 0.94 * width, maxWidth: 1.3 * width }}
      >
        {targets.map((target) => {
          const branch = wiring.branches.find(
            ({ id }) => target.kind === 'branch' && id === target.id,
          );
          if (branch === undefined) return null;
          return (
            <rect
              key={branch.id}
              className="diagram-target"
              data-selected={branch.id === selected}
              x={target.x + 3}
              y={target.y}
              width={target.width - 6}
              height={target.height}
              rx={4}
              role="button"
              tabIndex={0}
              aria-label={text.choose(branch.name)}
              aria-pressed={branch.id === selected}
              onClick={() => onSelect(branch.id)}
              onKeyDown={(event: KeyboardEvent) => {
                if (event.key !== 'Enter' && event.key !== ' ') return;
                event.preventDefault();
                onSelect(branch.id);
              }}
            />
          );
        })}
        <g className="diagram-ink" aria-hidden="true">
          {shapes.map((shape, index) => (
            // The drawing is made anew as a whole: its order is its identity.
            <Shape key={index} shape={shape} />
          ))}
        </g>
      </svg>
    </div>
  );
};

const Shape = ({ shape }: { readonly shape: DiagramShape }) =>
  shape.kind === 'text' ? (
    <text className={`ink-${shape.role}`} x={shape.x} y={shape.y} textAnchor={shape.anchor}>
      {shape.text}
    </text>
  ) : (
    <path
      className={`ink-${shape.role}${shape.filled ? ' ink-filled' : ''}`}
      d={shape.d}
      {...(shape.dashed ? { strokeDasharray: '5 4' } : {})}
    />
  );
