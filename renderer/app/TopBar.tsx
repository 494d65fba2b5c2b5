import { Button as Base } from 'react-aria-components';
import { IconButton } from '../controls/Button.tsx';
import { countFindings, severities } from '../state/findings-of.ts';
import { showFindings } from '../state/findings-view.ts';
import { useDocument } from '../state/document-store.ts';
import { isUnsaved, usePlan, usePlanState } from '../state/plan-store.ts';
import { useStudy } from '../state/shown-study.ts';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';
import { AppMenu } from './AppMenu.tsx';
import { joinFindings } from '#core/findings/join-findings.ts';
import { FindingMarks } from './FindingMarks.tsx';
import { PlaceNav } from './PlaceNav.tsx';
import { runCommand } from './commands.ts';
import { useKeysOf } from './use-keys.ts';
import './top-bar.css';

/** Plan, places, undo, findings, menu: one line. */
export const TopBar = () => {
  const text = useText(appTexts);
  const name = usePlan((plan) => plan.name);
  const unsaved = usePlanState(isUnsaved);
  const fileName = useDocument((state) => state.fileName);
  const undoName = usePlanState((state) => state.past.at(-1)?.name ?? null);
  const redoName = usePlanState((state) => state.future[0]?.name ?? null);
  const keysOf = useKeysOf();
  return (
    <header className="top-bar">
      <div className="top-plan" title={fileName ?? text.notSavedYet}>
        <h1 className="top-name">{name === '' ? 'Cellwain' : name}</h1>
        {unsaved ? (
          <span className="top-unsaved" role="img" aria-label={text.unsaved} title={text.unsaved}>
            ●
          </span>
        ) : null}
      </div>
      <PlaceNav />
      <div className="top-tools">
        <IconButton
          icon="undo"
          label={text.undo(undoName)}
          keys={keysOf('edit.undo')}
          isDisabled={undoName === null}
          onPress={() => runCommand('edit.undo')}
        />
        <IconButton
          icon="redo"
          label={text.redo(redoName)}
          keys={keysOf('edit.redo')}
          isDisabled={redoName === null}
          onPress={() => runCommand('edit.redo')}
        />
        <IconButton
          icon="search"
          label={text.find}
          keys={keysOf('view.palette')}
          onPress={() => runCommand('view.palette')}
        />
        <FindingsButton />
        <AppMenu />
      </div>
    </header>
  );
};

const FindingsButton = () => {
  const text = useText(appTexts);
  const { study } = useStudy();
  // Once for all options, as the list shows them.
  const findings = joinFindings(study?.findings ?? []).map(({ finding }) => finding);
  const count = countFindings(findings);
  const spoken = severities
    .filter((severity) => count[severity] > 0)
    .map((severity) => text.severity[severity](count[severity]))
    .join(', ');
  return (
    <Base
      className="findings-button"
      aria-label={`${text.findings}: ${spoken === '' ? text.noFindings : spoken}`}
      onPress={() => showFindings()}
    >
      <span className="findings-word">{text.findings}</span>
      <FindingMarks findings={findings} />
    </Base>
  );
};
