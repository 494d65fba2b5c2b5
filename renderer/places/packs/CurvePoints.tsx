import { useId, useState } from 'react';
import type { DischargeCurve } from '#core/plan/schema/block.ts';
import { FieldFrame } from '../../controls/FieldFrame.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { formatMinutes, formatTyped } from '../../text/format.ts';
import { ratingTexts } from '../../text/rating.ts';
import { useText } from '../../text/use-text.ts';
import { readCurve } from './read-curve.ts';

interface CurvePointsProps {
  readonly label: string;
  readonly points: DischargeCurve['points'];
  readonly onCommit: (points: DischargeCurve['points']) => void;
}

/** The points of a curve as lines of text, so that columns of a table can be pasted; taken over on leaving. */
export const CurvePoints = ({ label, points, onCommit }: CurvePointsProps) => {
  const text = useText(ratingTexts);
  const language = useSettings((state) => state.language);
  const id = useId();
  const written = points
    .map(
      ({ timeMin, voltageV }) =>
        `${formatTyped(timeMin, language)}\t${formatTyped(voltageV, language)}`,
    )
    .join('\n');
  // What is typed belongs to the points it was typed over: an undo makes it void.
  const [typing, setTyping] = useState<{ over: string; text: string | null; error: string | null }>(
    {
      over: written,
      text: null,
      error: null,
    },
  );
  const current = typing.over === written ? typing : { text: null, error: null };
  const draft = current.text ?? written;
  const commit = (): void => {
    if (draft === written) return setTyping({ over: written, text: null, error: null });
    const read = readCurve(draft);
    const complain = (error: string): void => setTyping({ over: written, text: draft, error });
    switch (read.kind) {
      case 'points':
        return onCommit(read.points);
      case 'wrong':
        return complain(text.curveWrong(read.line));
      case 'few':
        return complain(text.curveFew);
      case 'many':
        return complain(text.curveMany);
    }
  };
  return (
    <FieldFrame id={id} label={label} help={text.curveHelp} error={current.error ?? undefined} wide>
      <textarea
        id={id}
        className="text-area curve-points"
        rows={6}
        spellCheck={false}
        aria-invalid={current.error !== null}
        aria-describedby={current.error === null ? undefined : `${id}-error`}
        data-draft={draft !== written}
        value={draft}
        onChange={(event) => setTyping({ over: written, text: event.target.value, error: null })}
        onBlur={commit}
      />
      <span className="soft">
        {text.curveCount(points.length, formatMinutes(points.at(-1)?.timeMin ?? 0, language))}
      </span>
    </FieldFrame>
  );
};
