import type { Language } from '../plan/language.ts';
import type { UnitSystem } from '../units/display.ts';
import { buildPart } from './parts/build-part.ts';
import { chargeCardPart } from './parts/charge-card-part.ts';
import { commissioningPart } from './parts/commissioning-part.ts';
import { diagramPart } from './parts/diagram-part.ts';
import { handoverPart } from './parts/handover-part.ts';
import { labelPart } from './parts/label-part.ts';
import { logPart } from './parts/log-part.ts';
import { monthlyPart } from './parts/monthly-part.ts';
import { questionPart } from './parts/question-part.ts';
import { shoppingPart } from './parts/shopping-part.ts';
import { wiresPart } from './parts/wires-part.ts';
import { planHash } from './plan-hash.ts';
import type { Sheet, SheetPart } from './sheet.ts';
import type { SheetFacts } from './sheet-facts.ts';
import { sheetFigures } from './sheet-figures.ts';
import { sheetVoice, type SheetVoice } from './sheet-voice.ts';

export interface SheetWishes {
  readonly language: Language;
  readonly units: UnitSystem;
  /** Day the sheet is made, year-month-day; the core has no clock. */
  readonly date: string;
  /** Version of the program. */
  readonly version: string;
}

const makers: readonly ((facts: SheetFacts, voice: SheetVoice) => SheetPart)[] = [
  buildPart,
  diagramPart,
  wiresPart,
  shoppingPart,
  labelPart,
  chargeCardPart,
  commissioningPart,
  monthlyPart,
  handoverPart,
  logPart,
];

/** The sheet of one option as data, from what `gatherSheetFacts` worked out. The same facts and wishes give the same sheet. */
export function buildSheet(facts: SheetFacts, wishes: SheetWishes): Sheet {
  const { plan, option } = facts;
  const { language, units, date, version } = wishes;
  const voice = sheetVoice(language, units);
  const figures = sheetFigures(facts);
  const hash = planHash(plan);
  return {
    language,
    title: `${plan.machine.name}: ${option.name}`,
    planName: plan.name,
    machineName: plan.machine.name,
    optionId: option.id,
    optionName: option.name,
    invented: plan.invented,
    date,
    version,
    planHash: hash,
    figures,
    parts: [
      ...makers.map((make) => make(facts, voice)),
      questionPart(facts, voice, { date, version, hash }),
    ],
  };
}
