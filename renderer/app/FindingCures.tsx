import { applyCure } from '#core/findings/cure.ts';
import type { JoinedFinding, SharedCure } from '#core/findings/join-findings.ts';
import { Button } from '../controls/Button.tsx';
import { edit, undo } from '../state/plan-store.ts';
import { useIsStale } from '../state/shown-study.ts';
import { showToast } from '../state/toast-store.ts';
import { findingTexts } from '../text/findings.ts';
import { useText } from '../text/use-text.ts';

interface FindingCuresProps {
  readonly joined: JoinedFinding;
  readonly nameOf: (optionId: string | null) => string;
  readonly onCured: (() => void) | undefined;
}

/** The remedies that the plan can take over in one undoable step, each with what will change. */
export const FindingCures = ({ joined, nameOf, onCured }: FindingCuresProps) => {
  const text = useText(findingTexts);
  const stale = useIsStale();
  const { cures, shares } = joined;
  if (cures.length === 0) return null;
  const wordsOf = (cure: SharedCure): string =>
    cure.optionIds.length === shares.length
      ? cure.does
      : text.forOptions(cure.does, cure.optionIds.map(nameOf).join(', '));
  const take = (cure: SharedCure): void => {
    const words = wordsOf(cure);
    edit(words, (draft) => applyCure(draft, cure));
    showToast(text.takenOver(words), { label: text.bringBack, run: undo });
    onCured?.();
  };
  return (
    <div
      className="finding-cures"
      role="group"
      aria-label={text.takeOver}
      title={text.takeOverHint}
    >
      <span className="soft">{text.takeOver}</span>
      {cures.map((cure) => (
        // A cure belongs to the plan it was worked out for; while the figures are behind, its places may have moved.
        <Button key={wordsOf(cure)} isDisabled={stale} onPress={() => take(cure)}>
          {wordsOf(cure)}
        </Button>
      ))}
    </div>
  );
};
