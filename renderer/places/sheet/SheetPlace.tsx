import { useEffect, useMemo } from 'react';
import { EmptyState } from '../../controls/Section.tsx';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { useCompare } from '../../state/compare-store.ts';
import { theHost } from '../../state/document-store.ts';
import { chooseOption, usePlace } from '../../state/place-store.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { askSheet, endSheet, useSheetState } from '../../state/sheet-store.ts';
import { useStudyState } from '../../state/study-store.ts';
import { today } from '../../state/today.ts';
import { sheetTexts } from '../../text/sheet.ts';
import { useText } from '../../text/use-text.ts';
import { OptionPick } from '../charging/OptionPick.tsx';
import { SheetActions } from './SheetActions.tsx';
import { SheetControls } from './SheetControls.tsx';
import { SheetPreview } from './SheetPreview.tsx';
import '../charging/charging.css';
import './sheet.css';

/** What is printed or exported: pages to choose on the left, the paper on the right. */
export const SheetPlace = () => {
  const text = useText(sheetTexts);
  const plan = usePlan((all) => all);
  const chosen = usePlace((state) => state.optionId);
  const settings = useSettings();
  const { sheet, calendar, isWhole, stale, failure, parts, ...own } = useSheetState();
  const { units } = settings;
  const language = own.language ?? settings.language;
  const paper = own.paper ?? (units === 'us' ? 'letter' : 'a4');
  const spread = useCompare(({ fresh, spread: all }) => (fresh.has('spread') ? all : null));
  const isStudied = useStudyState(({ studied, stale: waits }) => studied === plan && !waits);
  const known = isStudied ? spread : null;
  const option = plan.options.find(({ id }) => id === chosen) ?? plan.options[0]!;

  useEffect(
    () =>
      askSheet({
        plan,
        optionId: option.id,
        language,
        units,
        date: today(),
        version: theHost().version,
        known,
      }),
    [plan, option.id, language, units, known],
  );
  useEffect(() => endSheet, []);

  const choice = useMemo(
    () => (sheet === null ? null : { sheet, parts, paper }),
    [sheet, parts, paper],
  );
  return (
    <div className="place-body sheet-place">
      <OptionPick
        label={text.option}
        selected={option.id}
        entries={plan.options.map(({ id, name }, index) => ({
          id,
          label: name,
          mark: <SeriesMark index={index} />,
        }))}
        onSelect={chooseOption}
      />
      <div className="sheet-bar">
        {choice === null ? null : (
          <SheetActions
            choice={choice}
            calendar={calendar}
            isWaiting={stale || !isWhole || parts.length === 0}
          />
        )}
        <p className="sheet-status soft" role="status">
          {failure !== null
            ? `${text.failed} ${failure}`
            : stale
              ? text.making
              : isWhole
                ? text.ready(parts.length)
                : text.spreading}
        </p>
      </div>
      <div className="sheet-columns">
        <div className="sheet-side">
          <SheetControls paper={paper} language={language} />
          {theHost().kind === 'browser' ? (
            <p className="soft sheet-hint">{text.browserPdf}</p>
          ) : null}
          {sheet !== null && calendar === null ? (
            <p className="soft sheet-hint">{text.noCalendar}</p>
          ) : null}
        </div>
        {choice === null ? null : parts.length === 0 ? (
          <EmptyState icon="sheet" title={text.nothing}>
            {text.nothingLead}
          </EmptyState>
        ) : (
          <SheetPreview {...choice} label={text.preview} />
        )}
      </div>
    </div>
  );
};
