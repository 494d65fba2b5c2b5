import type { DischargeCurve } from '#core/plan/schema/block.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { ratingTexts } from '../../text/rating.ts';
import { useText } from '../../text/use-text.ts';
import { CurvePoints } from './CurvePoints.tsx';

interface CurveListProps {
  readonly curves: readonly DischargeCurve[];
  /** Path of the list of curves. */
  readonly path: string;
  readonly onChange: (curves: DischargeCurve[]) => void;
}

const most = 8;

/** Discharge curves at constant current, each with its current and its points. */
export const CurveList = ({ curves, path, onChange }: CurveListProps) => {
  const text = useText(ratingTexts);
  const add = (): void => {
    const last = curves.at(-1);
    if (last === undefined) return;
    const half = last.points.map((point) => ({ ...point, timeMin: point.timeMin / 2 }));
    onChange([...curves, { currentA: 2 * last.currentA, points: half }]);
  };
  return (
    <>
      {curves.map((curve, at) => (
        <section key={at} className="curve" aria-label={text.curve(at + 1)}>
          <header className="curve-head">
            <h3>{text.curve(at + 1)}</h3>
            <IconButton
              icon="trash"
              isDisabled={curves.length <= 1}
              label={text.removeCurve(at + 1)}
              onPress={() => onChange(curves.filter((_, other) => other !== at))}
            />
          </header>
          <div className="curve-fields">
            <QuantityField path={`${path}.${at}.currentA`} />
            <CurvePoints
              label={text.curvePoints}
              points={curve.points}
              onCommit={(points) =>
                onChange(curves.map((each, other) => (other === at ? { ...each, points } : each)))
              }
            />
          </div>
        </section>
      ))}
      <div>
        <Button icon="plus" isDisabled={curves.length >= most} onPress={add}>
          {text.addCurve}
        </Button>
      </div>
    </>
  );
};
