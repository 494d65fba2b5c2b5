import '../state/page-policy.ts';
import { buildSheet, gatherSheetFacts } from '#core/sheet/index.ts';
import { calendarText } from '#core/week/calendar.ts';
import { parseCivilDate } from '#core/week/civil-date.ts';
import type { SheetAnswer, SheetRequest } from './sheet-message.ts';

/** The part of a dedicated worker's global that is used here; the page's own types describe a window. */
const scope = globalThis as unknown as {
  addEventListener(
    type: 'message',
    listener: (event: { readonly data: SheetRequest }) => void,
  ): void;
  postMessage(answer: SheetAnswer, transfer: readonly Transferable[]): void;
};

const answerTo = (request: SheetRequest, isWhole: boolean): SheetAnswer => {
  const { ticket, plan, optionId, language, date, known } = request;
  try {
    const option = plan.options.find(({ id }) => id === optionId) ?? plan.options[0]!;
    const facts = gatherSheetFacts(plan, option, { language, spread: isWhole, known });
    const from = parseCivilDate(date);
    return {
      kind: 'sheet',
      ticket,
      sheet: buildSheet(facts, request),
      calendar:
        facts.week.obstacle === null && from !== null
          ? calendarText(plan, option, facts.week, from, language)
          : null,
      isWhole,
    };
  } catch (error) {
    return {
      kind: 'failed',
      ticket,
      message: error instanceof Error ? error.message : String(error),
    };
  }
};

scope.addEventListener('message', ({ data }) => {
  // The first page stands at once; the spreads, which are hundreds of runs, follow.
  const first = answerTo(data, false);
  scope.postMessage(first, []);
  if (first.kind === 'sheet') scope.postMessage(answerTo(data, true), []);
});
