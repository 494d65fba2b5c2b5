import { useSettings } from '../../../state/settings-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import { formatFixed, formatMinutes } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import type { PairedComparison, PlanSpread } from '#core/compare/spread/spread.ts';

/** Up to so many options every pair is told; of more, the longest-lasting one against each other. */
const everyPairUpTo = 3;

function toldPairs({ options, comparisons }: PlanSpread): readonly PairedComparison[] {
  if (options.length <= everyPairUpTo) return comparisons;
  const best = options.reduce((one, other) =>
    other.likely.value > one.likely.value ? other : one,
  );
  return comparisons.filter(({ firstId, secondId }) => firstId === best.id || secondId === best.id);
}

/** Who outlasts whom, in how many of a hundred cases: the options on the same weather, load and blocks. */
export const PairSentences = ({ spread }: { readonly spread: PlanSpread }) => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const nameOf = (id: string): string => spread.options.find((each) => each.id === id)?.name ?? id;
  const pairs = toldPairs(spread);
  if (pairs.length === 0) return null;
  return (
    <div>
      <h3 className="spread-subtitle">{text.pairsTitle}</h3>
      <ul className="spread-pairs">
        {pairs.map(({ firstId, secondId, firstOutlastsPercent, likely }) => {
          const firstWins = firstOutlastsPercent >= 50;
          const [winner, loser] = firstWins ? [firstId, secondId] : [secondId, firstId];
          const count = firstWins ? firstOutlastsPercent : 100 - firstOutlastsPercent;
          return (
            <li key={`${firstId} ${secondId}`}>
              {firstOutlastsPercent === 50 && likely.value === 0
                ? text.even(nameOf(firstId), nameOf(secondId))
                : text.outlasts(
                    nameOf(winner),
                    nameOf(loser),
                    formatFixed(count, language, 0),
                    formatMinutes(Math.abs(likely.value), language),
                  )}
            </li>
          );
        })}
      </ul>
    </div>
  );
};
