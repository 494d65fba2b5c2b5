import { chargeCard } from '../../week/charge-card.ts';
import { clockText } from '../../week/clock.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetBlock, SheetPart } from '../sheet.ts';
import { cardPartWords } from '../words/care-words.ts';

/** The card beside the charger: facts, what to do, when, storage, cautions. */
export function chargeCardPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(cardPartWords, voice.language);
  const { plan, option, headline, charge } = facts;
  const card = chargeCard(plan, option, charge, headline.outing.ambientC, voice.language);
  const misfits = headline.study.chargerMatch?.verdict === 'misfits';
  return {
    id: 'charge-card',
    title: words.title,
    lead: words.lead,
    wide: false,
    blocks: [
      ...(misfits ? ([{ kind: 'text', tone: 'strong', text: words.misfit }] as const) : []),
      { kind: 'care', title: words.care, items: [...card.cautions].toReversed() },
      { kind: 'facts', title: words.facts, rows: card.lines },
      { kind: 'heading', text: words.todo },
      { kind: 'list', ordered: true, items: card.steps },
      ...(misfits ? [] : routineBlocks(facts, voice)),
      ...storageBlocks(facts, voice),
    ],
  };
}

/** The proposed routine of the week; nothing where no week could be simulated. */
export function routineBlocks({ week }: SheetFacts, voice: SheetVoice): SheetBlock[] {
  const words = wordsIn(cardPartWords, voice.language);
  if (week.steps.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'routine',
      caption: words.when,
      columns: [
        { id: 'days', label: words.days },
        { id: 'at', label: words.at, align: 'end' },
        { id: 'takes', label: words.takes, unit: 'h', align: 'end' },
        { id: 'from', label: words.from, unit: '%', align: 'end' },
        { id: 'to', label: words.to, unit: '%', align: 'end' },
      ],
      rows: week.steps.map(({ days, plugMin, chargingMin, fromPercent, toPercent }) => [
        days.map((day) => words[day]).join(', '),
        clockText(plugMin),
        { text: voice.fixed(chargingMin / 60, 1), value: chargingMin / 60 },
        { text: voice.fixed(fromPercent, 0), value: fromPercent },
        { text: voice.fixed(toPercent, 0), value: toPercent },
      ]),
    },
    ...(week.assumedWeek
      ? ([{ kind: 'text', tone: 'soft', text: words.assumedWeek }] as const)
      : []),
  ];
}

export function storageBlocks({ week }: SheetFacts, voice: SheetVoice): SheetBlock[] {
  const words = wordsIn(cardPartWords, voice.language);
  const { storage } = week;
  if (storage === null) return [];
  return [
    { kind: 'heading', text: words.storage },
    {
      kind: 'text',
      text: filled(storage.topUpDays.length > 0 ? words.storageText : words.storageQuiet, {
        days: voice.number(storage.days),
        month: String(storage.firstMonth),
        percent: voice.quantity(storage.startPercent, '%', 2),
        topUps: storage.topUpDays.join(', '),
        alone: voice.quantity(storage.endPercentAlone, '%', 2),
      }),
    },
  ];
}
