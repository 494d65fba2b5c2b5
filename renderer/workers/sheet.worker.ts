import '../state/page-policy.ts';
import { failureText } from '../state/failure-text.ts';
import {
  addSheetSpreads,
  buildSheet,
  gatherSheetFacts,
  type SheetFacts,
} from '#core/sheet/index.ts';
import { createRepeatedStudy } from '#core/study/study-again.ts';
import { calendarText } from '#core/week/calendar.ts';
import { parseCivilDate } from '#core/week/civil-date.ts';
import type { SheetAnswer, SheetRequest } from './sheet-message.ts';
import { workerScope } from './worker-scope.ts';

const scope = workerScope<SheetRequest, SheetAnswer>();
/** A sheet of another option, or after an edit, runs again only what has changed. */
const study = createRepeatedStudy();

const pageOf = (request: SheetRequest, facts: SheetFacts, isWhole: boolean): SheetAnswer => {
  const { ticket, language, date } = request;
  const { plan, option, week } = facts;
  const from = parseCivilDate(date);
  return {
    kind: 'sheet',
    ticket,
    sheet: buildSheet(facts, request),
    calendar:
      week.obstacle === null && from !== null
        ? calendarText(plan, option, week, from, language)
        : null,
    isWhole,
  };
};

const answer = (request: SheetRequest): void => {
  const { ticket, plan, optionId, language, known } = request;
  try {
    const option = plan.options.find(({ id }) => id === optionId) ?? plan.options[0]!;
    const facts = gatherSheetFacts(plan, option, { language, spread: false, known, study });
    // The first page stands at once; the spreads, which are hundreds of runs, follow.
    scope.postMessage(pageOf(request, facts, false), []);
    scope.postMessage(pageOf(request, addSheetSpreads(facts, { language }), true), []);
  } catch (error) {
    scope.postMessage({ kind: 'failed', ticket, message: failureText(error) }, []);
  }
};

scope.addEventListener('message', ({ data }) => answer(data));
