import { whatIfTexts } from '../text/what-if.ts';
import { useText } from '../text/use-text.ts';
import { fetched } from './Fetched.tsx';
import { Icon } from './icons.tsx';
import type { WhatIfProps } from './WhatIf.tsx';

const WhatIf = fetched(async () => (await import('./WhatIf.tsx')).WhatIf);

interface TryValuesProps extends Omit<WhatIfProps, 'onClose'> {
  readonly isOpen: boolean;
  readonly onOpen: (isOpen: boolean) => void;
}

/** A button inside a field that opens its slider. Keys open it from the field itself, so it is no stop of its own. */
export const TryValues = ({ isOpen, onOpen, ...trial }: TryValuesProps) => {
  const text = useText(whatIfTexts);
  return (
    <>
      <button
        type="button"
        className="try-button"
        tabIndex={-1}
        aria-label={text.open(trial.label)}
        title={`${text.title} (Alt+Enter)`}
        onClick={() => onOpen(true)}
      >
        <Icon name="slider" />
      </button>
      {isOpen ? <WhatIf {...trial} onClose={() => onOpen(false)} /> : null}
    </>
  );
};
