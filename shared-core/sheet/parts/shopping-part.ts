import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetPart } from '../sheet.ts';
import { shoppingLines } from '../shopping-lines.ts';
import { shoppingWords } from '../words/shopping-words.ts';
import { careLine } from './care-block.ts';

/** The shopping list: generic lines, quantities, prices where the plan knows them. */
export function shoppingPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(shoppingWords, voice.language);
  const { currency } = facts.plan;
  const lines = shoppingLines(facts, voice);
  const priced = lines.filter(({ priceEach }) => priceEach !== null);
  const sum = priced.reduce(
    (total, { priceEach, quantity }) => total + (priceEach ?? 0) * quantity,
    0,
  );
  const money = (value: number | null) => ({ text: voice.fixed(value, 2), value });
  return {
    id: 'shopping',
    title: words.title,
    lead: words.lead,
    wide: false,
    blocks: [
      careLine(voice),
      {
        kind: 'table',
        id: 'shopping',
        caption: words.title,
        columns: [
          { id: 'item', label: words.item },
          { id: 'specification', label: words.specification },
          { id: 'quantity', label: words.quantity, align: 'end' },
          { id: 'unit', label: '', tight: true },
          { id: 'each', label: words.each, unit: currency, align: 'end' },
          { id: 'total', label: words.total, unit: currency, align: 'end' },
          { id: 'have', label: words.have, byHand: true },
        ],
        rows: lines.map(({ item, specification, quantity, unit, priceEach }) => [
          item,
          specification,
          { text: voice.number(quantity), value: quantity },
          unit,
          money(priceEach),
          money(priceEach === null ? null : priceEach * quantity),
          '',
        ]),
        foot: [words.sum, '', '', '', '', money(priced.length === 0 ? null : sum), ''],
      },
      {
        kind: 'text',
        tone: 'soft',
        text: filled(words.unpriced, { count: String(lines.length - priced.length) }),
      },
      { kind: 'text', tone: 'soft', text: words.wireNote },
    ],
  };
}
