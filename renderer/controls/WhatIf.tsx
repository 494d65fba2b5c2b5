import { useState, type RefObject } from 'react';
import { Dialog, Heading, Popover, Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { readField, setField } from '../state/plan-path.ts';
import { dropStep, edit, planStore, trialKey, usePlan } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { formatTyped } from '../text/format.ts';
import { convertShown } from '../text/shown-unit.ts';
import { whatIfTexts } from '../text/what-if.ts';
import { useText } from '../text/use-text.ts';
import { Button } from './Button.tsx';
import type { QuantityRange } from './quantity-range.ts';
import { trialRange } from './trial-range.ts';
import { WhatIfResults } from './WhatIfResults.tsx';
import './what-if.css';

export interface WhatIfProps {
  readonly path: string;
  readonly label: string;
  /** Value the slider starts from, in the stored unit: the value of the field, or what is assumed for it. */
  readonly start: number;
  readonly storedUnit: string;
  readonly shownUnit: string;
  readonly range: QuantityRange;
  readonly integer: boolean;
  /** In place of the plain edit of the field, under the key of the trial. */
  readonly onCommit?: ((value: number, key: string) => void) | undefined;
  readonly anchor: RefObject<HTMLElement | null>;
  readonly onClose: () => void;
}

/** A slider over one number with the figures of every option beside it; the whole trial is one undoable step. */
export const WhatIf = (props: WhatIfProps) => {
  const { path, label, start, storedUnit, shownUnit, range, integer, anchor, onClose } = props;
  const text = useText(whatIfTexts);
  const language = useSettings((state) => state.language);
  const [key] = useState(() => trialKey(path));
  const [first] = useState({
    value: readField(planStore.getState().plan, path),
    shown: convertShown(start, storedUnit, shownUnit),
  });
  const [reach] = useState(() => trialRange(first.shown, range, storedUnit, shownUnit, integer));
  const now = usePlan((plan) => readField(plan, path));
  const at = typeof now === 'number' ? convertShown(now, storedUnit, shownUnit) : first.shown;
  const written = (value: number): string => `${formatTyped(value, language)} ${shownUnit}`.trim();

  const share = (value: number): string =>
    `${(100 * (Math.min(reach.high, value) - reach.low)) / (reach.high - reach.low)}%`;

  const move = (shown: number): void => {
    const dustless = Number(shown.toPrecision(10));
    const value =
      dustless === first.shown && typeof first.value === 'number'
        ? first.value
        : convertShown(dustless, shownUnit, storedUnit);
    if (props.onCommit !== undefined) props.onCommit(value, key);
    else edit(label, (plan) => setField(plan, path, value), key);
  };
  const close = (): void => {
    // A trial that came back to where it began is no step.
    if (readField(planStore.getState().plan, path) === first.value) dropStep(key);
    onClose();
  };
  return (
    <Popover
      className="popover"
      placement="right"
      triggerRef={anchor}
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) close();
      }}
    >
      <Dialog className="popover-body what-if" aria-label={`${text.title} ${label}`}>
        <Heading slot="title" className="popover-title">
          {`${text.title} ${label}`}
        </Heading>
        <p className="soft">{text.lead}</p>
        <Slider
          className="slider"
          aria-label={text.value(label)}
          minValue={reach.low}
          maxValue={reach.high}
          step={reach.step}
          value={at}
          onChange={move}
        >
          <div className="slider-words">
            <output className="slider-value">{written(at)}</output>
            <span className="soft">
              {at === first.shown ? '' : text.before(written(first.shown))}
            </span>
          </div>
          <SliderTrack className="slider-track">
            <span className="slider-fill" style={{ width: share(at) }} />
            <span className="slider-start" style={{ left: share(first.shown) }} />
            <SliderThumb className="slider-thumb" autoFocus />
          </SliderTrack>
          <div className="slider-ends" aria-hidden="true">
            <span>{written(reach.low)}</span>
            <span>{written(reach.high)}</span>
          </div>
        </Slider>
        <WhatIfResults />
        <div className="what-if-foot">
          <Button
            onPress={() => {
              dropStep(key);
              onClose();
            }}
          >
            {text.putBack}
          </Button>
          <Button look="main" onPress={close}>
            {text.keep}
          </Button>
        </div>
      </Dialog>
    </Popover>
  );
};
