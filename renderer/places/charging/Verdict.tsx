import type { ChargerMatch } from '#core/charge/match-result.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useText } from '../../text/use-text.ts';

/** Shape as well as colour: tick, ring with bar, cross, question. */
const shapes = {
  fits: 'm3.5 8.5 3 3 6-7',
  limits: 'M3.5 8h9',
  misfits: 'm4 4 8 8m0-8-8 8',
  unknown: 'M6 6a2 2 0 1 1 3 1.7c-.7.5-1 .9-1 1.8M8 12.2h.01',
} as const;

/** A verdict as mark and word; short for beside a sentence that says it. */
export const Verdict = ({
  verdict,
  isShort = false,
}: {
  readonly verdict: ChargerMatch['verdict'];
  readonly isShort?: boolean;
}) => {
  const text = useText(chargingTexts).match;
  return (
    <span className={`verdict verdict-${verdict}`}>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
        <path
          d={shapes[verdict]}
          fill="none"
          stroke="currentColor"
          strokeWidth="2"
          strokeLinecap="round"
          strokeLinejoin="round"
        />
      </svg>
      {isShort ? null : text.verdicts[verdict]}
    </span>
  );
};
