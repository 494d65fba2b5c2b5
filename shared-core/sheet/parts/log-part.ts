import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetColumn, SheetPart } from '../sheet.ts';
import { logWords } from '../words/log-words.ts';

/** Lines to fill in, and columns for single blocks where they fit on the page. */
const lineCount = 14;
const mostBlocks = 6;

/** A log sheet for readings with the planned figures beside it. */
export function logPart({ option, headline }: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(logWords, voice.language);
  const { seriesCount, parallelCount } = option.pack;
  const { study } = headline;
  const { run } = study;
  const places = blockPlaces(seriesCount, parallelCount);
  const byHand = (id: string, label: string, unit?: string): SheetColumn => ({
    id,
    label,
    byHand: true,
    ...(unit === undefined ? {} : { unit }),
  });
  const columns = [
    byHand('date', words.date),
    byHand('air', words.air, voice.symbol('°C')),
    ...places.map((place) => byHand(`block-${place}`, filled(words.block, { place }), 'V')),
    byHand('pack', `${words.pack}, ${words.rest.toLowerCase()}`, 'V'),
    byHand('loaded', words.loaded, 'V'),
    byHand('at', words.at, 'A'),
    byHand('minutes', words.minutes, 'min'),
    byHand('charge', words.charge, 'A·h'),
    byHand('to-full', words.toFull, 'h'),
    byHand('remark', words.remark),
  ];
  return {
    id: 'log',
    title: words.title,
    lead: words.lead,
    wide: true,
    blocks: [
      {
        kind: 'columns',
        groups: [
          {
            kind: 'facts',
            title: words.expected,
            rows: [
              {
                label: words.fullBlock,
                value: voice.quantity(study.fullRestVoltageV / seriesCount, 'V'),
              },
              { label: words.fullPack, value: voice.quantity(study.fullRestVoltageV, 'V') },
              { label: words.lowest, value: voice.quantity(run.minimumBusVoltageV, 'V') },
              { label: words.average, value: voice.quantity(run.averageCurrentA, 'A') },
            ],
          },
          {
            kind: 'facts',
            title: headline.outing.name,
            rows: [
              { label: words.runTime, value: voice.minutes(run.runTimeMin) },
              { label: words.delivered, value: voice.quantity(run.deliveredAh, 'A·h') },
              { label: words.peak, value: voice.quantity(run.peakCurrentA, 'A') },
              {
                label: words.hours,
                value: voice.quantity(study.chargerMatch?.hoursToFull, 'h', 2),
              },
            ],
          },
        ],
      },
      { kind: 'text', tone: 'soft', text: words.care },
      {
        kind: 'table',
        id: 'log',
        caption: words.table,
        columns,
        rows: Array.from({ length: lineCount }, () => columns.map(() => '')),
        roomy: true,
      },
    ],
  };
}

/** `1.1`, `1.2` … or `1`, `2` … with one string; none where there are too many to stand side by side. */
function blockPlaces(seriesCount: number, parallelCount: number): string[] {
  const count = seriesCount * parallelCount;
  if (count < 2 || count > mostBlocks) return [];
  return Array.from({ length: count }, (_, index) => {
    const position = (index % seriesCount) + 1;
    return parallelCount > 1 ? `${Math.floor(index / seriesCount) + 1}.${position}` : `${position}`;
  });
}
