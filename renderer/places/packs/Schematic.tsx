import type { Pack } from '#core/plan/schema/option.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import './schematic.css';

interface SchematicProps {
  readonly pack: Pack;
  /** A pressed block, counted from 1; without it the drawing is a picture. */
  readonly onPress?: (string: number, position: number) => void;
  readonly pressed?: { readonly string: number; readonly position: number } | null;
}

const block = { width: 38, height: 24, gapX: 12, gapY: 10 };
const margin = { x: 22, y: 6 };

const count = (length: number): number[] => Array.from({ length }, (_, index) => index + 1);

/** Blocks as they are joined: strings as rows from minus to plus, blocks that differ marked with a diagonal. */
export const Schematic = ({ pack, onPress, pressed = null }: SchematicProps) => {
  const text = useText(packsTexts);
  const { seriesCount, parallelCount, differences } = pack;
  const step = block.width + block.gapX;
  const rise = block.height + block.gapY;
  const width = 2 * margin.x + seriesCount * step + block.gapX;
  const height = 2 * margin.y + parallelCount * rise - block.gapY;
  const middle = (string: number): number => margin.y + (string - 1) * rise + block.height / 2;
  const right = width - margin.x;
  const differs = (string: number, position: number): boolean =>
    differences.some((each) => each.string === string && each.position === position);
  return (
    <svg
      className="schematic"
      viewBox={`0 0 ${width} ${height}`}
      style={{ maxWidth: `${Math.max(10, width / 12)}rem` }}
      role={onPress === undefined ? 'img' : 'group'}
      aria-label={text.schematic(seriesCount, parallelCount, pack.block.name)}
    >
      <g className="schematic-wires">
        {count(parallelCount).map((string) => (
          <path key={string} d={`M${margin.x} ${middle(string)}H${right}`} />
        ))}
        <path
          d={`M${margin.x} ${middle(1)}V${middle(parallelCount)}M${right} ${middle(1)}V${middle(parallelCount)}`}
        />
        <path d={`M8 ${height / 2}H${margin.x}M${right} ${height / 2}H${width - 8}`} />
      </g>
      <circle className="schematic-terminal" cx="6" cy={height / 2} r="3" />
      <circle className="schematic-terminal" cx={width - 6} cy={height / 2} r="3" />
      {count(parallelCount).flatMap((string) =>
        count(seriesCount).map((position) => {
          const x = margin.x + block.gapX + (position - 1) * step;
          const y = margin.y + (string - 1) * rise;
          const isPressed = pressed?.string === string && pressed.position === position;
          const marks = (
            <>
              <rect width={block.width} height={block.height} rx="2" />
              <path d="M6 12h6M26 12h6M29 9v6" />
              {differs(string, position) ? (
                <path className="schematic-differs" d={`M0 ${block.height} ${block.width} 0`} />
              ) : null}
            </>
          );
          const name = text.differAt(string, position);
          return onPress === undefined ? (
            <g
              key={`${string}.${position}`}
              className="schematic-block"
              transform={`translate(${x} ${y})`}
            >
              {marks}
            </g>
          ) : (
            <g
              key={`${string}.${position}`}
              className="schematic-block schematic-press"
              transform={`translate(${x} ${y})`}
              role="button"
              tabIndex={0}
              aria-label={differs(string, position) ? `${name}, ${text.differCount(1)}` : name}
              aria-pressed={isPressed}
              onClick={() => onPress(string, position)}
              onKeyDown={(event) => {
                if (event.key !== 'Enter' && event.key !== ' ') return;
                event.preventDefault();
                onPress(string, position);
              }}
            >
              {marks}
            </g>
          );
        }),
      )}
    </svg>
  );
};
