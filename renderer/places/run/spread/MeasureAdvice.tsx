import { useSettings } from '../../../state/settings-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import { formatFixed } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import type { OptionSensitivity } from '#core/compare/sensitivity/sensitivity.ts';

/** What to measure first, how, and how much surer the run time is then. */
export const MeasureAdvice = ({ sensitivity }: { readonly sensitivity: OptionSensitivity }) => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const { measureFirst, effects } = sensitivity;
  const first = effects.find(({ id }) => id === measureFirst?.id);
  if (measureFirst === null || first === undefined)
    return <p className="soft">{text.nothingToMeasure}</p>;
  return (
    <p className="measure-advice">
      <b>{text.measureFirst(first.label[language])}</b> {first.measure?.[language]}{' '}
      {text.measureLeft(formatFixed(measureFirst.leftPercent, language, 0))}
    </p>
  );
};
