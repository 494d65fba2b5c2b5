import { useState } from 'react';
import { Button } from '../../../controls/Button.tsx';
import { Dialog } from '../../../controls/Dialog.tsx';
import { planStore, usePlan } from '../../../state/plan-store.ts';
import { cancelSearch, startSearch, useSearch } from '../../../state/search-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { formatFixed } from '../../../text/format.ts';
import { searchTexts } from '../../../text/search.ts';
import { useText } from '../../../text/use-text.ts';
import { SearchFields } from './SearchFields.tsx';
import { SearchOutcome } from './SearchOutcome.tsx';
import { formOf, isSearchable, wishesOf } from './search-form.ts';
import './search.css';

/** Wishes at the left, the packs that meet them at the right; a pack taken becomes an option. */
export const SearchDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const text = useText(searchTexts);
  const plan = usePlan((whole) => whole);
  const [form, setForm] = useState(() => formOf(plan));
  const { stage } = useSearch();
  const isRunning = stage !== 'idle';
  const close = (): void => {
    if (isRunning) cancelSearch();
    onClose();
  };
  const start = (): void => {
    const now = planStore.getState().plan;
    startSearch(now, wishesOf(now, form));
  };
  return (
    <Dialog
      title={text.title}
      isOpen
      onClose={close}
      size="wide"
      actions={
        <>
          <SearchProgress />
          {isRunning ? (
            <Button onPress={cancelSearch}>{text.cancel}</Button>
          ) : (
            <Button onPress={close}>{text.close}</Button>
          )}
          <Button look="main" isDisabled={!isSearchable(form) || isRunning} onPress={start}>
            {text.start}
          </Button>
        </>
      }
    >
      <p className="soft search-lead">{text.lead}</p>
      <div className="search-body">
        <div className="search-form">
          <SearchFields form={form} onChange={(change) => setForm({ ...form, ...change })} />
          {isSearchable(form) ? null : (
            <p className="search-trouble" role="alert">
              {text.bounds}
            </p>
          )}
        </div>
        <SearchOutcome plan={plan} />
      </div>
    </Dialog>
  );
};

const SearchProgress = () => {
  const text = useText(searchTexts);
  const language = useSettings((state) => state.language);
  const { stage, progress } = useSearch();
  if (stage === 'idle') return null;
  const share = progress === null ? 0 : progress.done / progress.count;
  const seconds = Math.ceil((progress?.leftMs ?? 0) / 1000);
  const words = stage === 'screening' ? text.screening : text.trying;
  return (
    <span className="search-progress">
      <progress className="behind-bar" value={share} max={1} aria-label={words} />
      {progress === null
        ? words
        : `${words}: ${text.progress(formatFixed(100 * share, language, 0), formatFixed(seconds, language, 0))}`}
    </span>
  );
};
