import type { CsvTable } from '../../charts/csv.ts';
import type { Language } from '#core/plan/language.ts';
import type { PlanStudy } from '#core/study/study.ts';
import type { runTexts } from '../../text/run.ts';
import { ledgerParts } from './ledger-parts.ts';

/** Where the energy went as CSV: a row for each part, a column for each option, full precision. */
export const ledgerCsv = (study: PlanStudy, text: (typeof runTexts)[Language]): CsvTable => ({
  fields: [`${text.ledgerAxis} [W·h]`, ...study.options.map(({ name }) => name)],
  data: ledgerParts.map((part) => [
    text.ledger[part],
    ...study.options.map(({ run }) => run.ledger[part]),
  ]),
});
