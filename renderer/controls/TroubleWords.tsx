import { controlTexts } from '../text/controls.ts';
import { useText } from '../text/use-text.ts';
import { Button } from './Button.tsx';
import type { TypedQuantity } from './read-quantity.ts';

/** Trouble in words of the field, or a reading that gave no value. */
export type Trouble = TypedQuantity | string;

interface TroubleProps {
  readonly trouble: Trouble | null;
  readonly unit: string;
  readonly typed: string;
  readonly onChoose: (value: number) => void;
}

/** What is wrong with a typed text and how to mend it; where it can be read two ways, the readings to choose from. */
export const TroubleWords = ({ trouble, unit, typed, onChoose }: TroubleProps) => {
  const text = useText(controlTexts);
  if (trouble === null) return null;
  if (typeof trouble === 'string') return <>{trouble}</>;
  if (trouble.kind === 'question') {
    return (
      <>
        {text.ambiguous(typed)}
        <span>
          {trouble.readings.map((reading) => (
            <Button key={reading.label} onPress={() => onChoose(reading.value)}>
              {reading.label}
            </Button>
          ))}
        </span>
      </>
    );
  }
  if (trouble.kind === 'mistake') return <>{text.mistake(trouble.problem, trouble.remedy, unit)}</>;
  return null;
};
