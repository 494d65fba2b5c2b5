import { Button } from '../controls/Button.tsx';
import { useDocument } from '../state/document-store.ts';
import { isUnsaved, usePlan, usePlanState } from '../state/plan-store.ts';
import { useIsStale, useTookMs } from '../state/shown-study.ts';
import { cancelStudy, retryStudy, useStudyState } from '../state/study-store.ts';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';
import { BehindStatus } from './BehindStatus.tsx';
import './status.css';

/** Whether the figures are of this plan, where the plan is kept, and the caution that always holds. */
export const StatusLine = () => {
  const text = useText(appTexts);
  const { slow, problems, failure } = useStudyState();
  const stale = useIsStale();
  const tookMs = useTookMs();
  const fileName = useDocument((state) => state.fileName);
  const invented = usePlan((plan) => plan.invented);
  const unsaved = usePlanState(isUnsaved);
  const isDone = !stale && tookMs !== null;
  return (
    <footer className="status">
      <span className="status-figures">
        {slow ? (
          <>
            <progress className="status-progress" aria-label={text.computing} />
            {text.computing}
            <Button look="quiet" onPress={cancelStudy}>
              {text.cancel}
            </Button>
          </>
        ) : isDone ? (
          text.upToDate(Math.round(tookMs))
        ) : problems.length > 0 || failure !== null ? (
          text.stale
        ) : stale ? (
          <>
            {text.computing}
            <Button look="quiet" onPress={retryStudy}>
              {text.again}
            </Button>
          </>
        ) : null}
      </span>
      <BehindStatus />
      {invented ? <span className="status-invented">{text.invented}</span> : null}
      <span title={text.recoveryKept}>
        {fileName ?? text.notSavedYet}
        {unsaved ? <span className="status-kept">{` · ${text.copyKept}`}</span> : null}
      </span>
      <span className="status-care">{text.care}</span>
    </footer>
  );
};
