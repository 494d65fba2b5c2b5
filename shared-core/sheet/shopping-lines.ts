import { chemistryTraits } from '../battery/chemistry.ts';
import type { Block } from '../plan/schema/block.ts';
import type { Pack } from '../plan/schema/option.ts';
import { cardWords } from '../week/card-words.ts';
import type { SheetFacts } from './sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from './sheet-voice.ts';
import { wiringLines } from './shopping-wiring.ts';
import { chargerKindWords } from './words/shared-words.ts';
import { shoppingWords } from './words/shopping-words.ts';

export interface ShoppingLine {
  readonly item: string;
  readonly specification: string;
  readonly quantity: number;
  /** `pcs` in the language of the sheet, or a length. */
  readonly unit: string;
  readonly priceEach: number | null;
}

/** What there is to buy, in generic words: pack, charger, converter, and what the wiring takes. */
export function shoppingLines(facts: SheetFacts, voice: SheetVoice): ShoppingLine[] {
  const words = wordsIn(shoppingWords, voice.language);
  const { plan, option } = facts;
  const { charger, pack } = option;
  const { converter } = plan.machine;
  const pieces = words.pieces;
  const chemistry = (block: Block) => cardWords[voice.language].chemistryNames[block.chemistry];
  const blocks = blockCounts(pack).map(({ block, count }): ShoppingLine => ({
    item: words.block,
    specification: blockSpecification(block, chemistry(block), voice),
    quantity: count,
    unit: pieces,
    priceEach: block.price,
  }));
  const chargerLine: ShoppingLine[] =
    charger === null
      ? []
      : [
          {
            item: words.charger,
            specification: filled(words.chargerSpec, {
              kind: chargerKindWords[charger.kind][voice.language],
              groups: String(charger.cellGroups),
              chemistry: charger.chemistries
                .map((each) => cardWords[voice.language].chemistryNames[each])
                .join(' / '),
              current: voice.quantity(charger.currentA, 'A'),
              volts:
                charger.endVoltageV === null
                  ? words.unknown
                  : voice.quantity(charger.endVoltageV, 'V', 4),
            }),
            quantity: 1,
            unit: pieces,
            priceEach: charger.price,
          },
        ];
  const converterLine: ShoppingLine[] =
    converter === null
      ? []
      : [
          {
            item: words.converter,
            specification: filled(words.converterSpec, {
              out: voice.quantity(converter.outputVoltageV, 'V'),
              current: voice.quantity(converter.ratedCurrentA, 'A'),
              low: voice.quantity(converter.minimumInputV ?? converter.outputVoltageV + 2, 'V'),
              high: voice.quantity(
                converter.maximumInputV ?? facts.headline.study.highestChargeVoltageV,
                'V',
              ),
            }),
            quantity: 1,
            unit: pieces,
            priceEach: converter.price,
          },
        ];
  const cover: ShoppingLine = {
    item: words.cover,
    specification: words.coverSpec,
    quantity: 2 * pack.seriesCount * pack.parallelCount,
    unit: pieces,
    priceEach: null,
  };
  return [...blocks, ...chargerLine, ...converterLine, ...wiringLines(facts, voice), cover];
}

/** How many of each type of block a pack holds. */
export function blockCounts(pack: Pack): { readonly block: Block; readonly count: number }[] {
  const replaced = pack.differences.flatMap(({ string, position, replacement }) =>
    replacement !== null && string <= pack.parallelCount && position <= pack.seriesCount
      ? [replacement]
      : [],
  );
  const usual = pack.seriesCount * pack.parallelCount - replaced.length;
  const counts = new Map<string, { block: Block; count: number }>();
  for (const block of replaced) {
    const key = JSON.stringify(block);
    counts.set(key, { block, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...(usual > 0 ? [{ block: pack.block, count: usual }] : []), ...counts.values()];
}

function blockSpecification(block: Block, chemistry: string, voice: SheetVoice): string {
  const words = wordsIn(shoppingWords, voice.language);
  const { lengthMm, widthMm, heightMm } = block;
  const nominalV = block.cellGroups * chemistryTraits[block.chemistry].nominalV;
  const parts = [
    filled(words.blockSpec, {
      chemistry,
      volts: voice.quantity(nominalV, 'V'),
      capacity: voice.quantity(block.capacityAh, 'A·h'),
      hours: voice.quantity(block.ratedHours, 'h'),
    }),
  ];
  if (block.continuousDischargeA !== null)
    parts.push(filled(words.carries, { amperes: voice.quantity(block.continuousDischargeA, 'A') }));
  if (lengthMm !== null && widthMm !== null && heightMm !== null)
    parts.push(
      filled(words.size, {
        length: voice.number(voice.shown(lengthMm, 'mm')),
        width: voice.number(voice.shown(widthMm, 'mm')),
        height: voice.quantity(heightMm, 'mm'),
      }),
    );
  if (block.massKg !== null) parts.push(voice.quantity(block.massKg, 'kg'));
  return parts.join('; ');
}
