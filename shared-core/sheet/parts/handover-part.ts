import { cardWords } from '../../week/card-words.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { sheetFigures } from '../sheet-figures.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetBlock, SheetPart } from '../sheet.ts';
import { handoverWords } from '../words/handover-words.ts';
import { careLine } from './care-block.ts';
import { routineBlocks } from './charge-card-part.ts';

/** A note in plain words for a carer: how long, how to charge, what to watch, what to do when something is wrong. */
export function handoverPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(handoverWords, voice.language);
  const { plan, option, headline } = facts;
  const { drive } = plan.machine;
  const chemistry = cardWords[voice.language].chemistryNames[option.pack.block.chemistry];
  const speed = headline.study.run.drive?.topSpeedKmh ?? null;
  const grade = drive?.steepestGradePercent ?? null;
  const { stop, warn } = sheetFigures(facts).findingCounts;
  return {
    id: 'handover',
    title: words.title,
    lead: words.lead,
    wide: false,
    blocks: [
      careLine(voice),
      { kind: 'heading', text: words.lasts },
      { kind: 'list', items: [...lastsLines(facts, voice), words.cold, words.weak] },
      { kind: 'heading', text: words.charging },
      { kind: 'list', items: chargingLines(facts, voice) },
      ...(mayCharge(facts) ? routineBlocks(facts, voice) : []),
      { kind: 'heading', text: words.rider },
      {
        kind: 'list',
        items: [
          speed === null
            ? words.noSpeed
            : filled(words.speed, { speed: voice.quantity(speed, 'km/h', 2) }),
          grade === null
            ? words.noHill
            : filled(words.hill, { grade: voice.quantity(grade, '%', 2) }),
          words.leave,
        ],
      },
      { kind: 'heading', text: words.trouble },
      {
        kind: 'list',
        items: [words.runaway, filled(words.smoke, { chemistry }), words.wet, words.fuse],
      },
      ...openBlocks(stop, warn, voice),
      { kind: 'blanks', labels: [words.builder, words.help, words.received] },
    ],
  };
}

function mayCharge({ headline }: SheetFacts): boolean {
  const verdict = headline.study.chargerMatch?.verdict ?? null;
  return verdict !== null && verdict !== 'misfits';
}

/** Promises are rounded down to five minutes, so that nobody walks home for a rounding. */
function lastsLines({ outings }: SheetFacts, voice: SheetVoice): string[] {
  const words = wordsIn(handoverWords, voice.language);
  const down = (minutes: number) =>
    voice.minutes(minutes < 10 ? minutes : Math.floor(minutes / 5) * 5);
  return outings.map(({ outing, study, spread }) =>
    spread === null
      ? filled(words.countPlain, {
          outing: outing.name,
          likely: down(study.run.runTimeMin),
        })
      : filled(words.countOn, {
          outing: outing.name,
          low: down(spread.low.value),
          likely: down(spread.likely.value),
        }),
  );
}

function chargingLines(facts: SheetFacts, voice: SheetVoice): string[] {
  const words = wordsIn(handoverWords, voice.language);
  const { charger } = facts.option;
  const { chargerMatch } = facts.headline.study;
  if (charger === null || chargerMatch === null) return [words.noCharger];
  if (!mayCharge(facts)) return [words.misfit];
  return [
    filled(words.only, { charger: charger.name }),
    ...(chargerMatch.hoursToFull === null
      ? []
      : [filled(words.hours, { hours: voice.quantity(chargerMatch.hoursToFull, 'h', 2) })]),
    words.done,
  ];
}

function openBlocks(stop: number, warn: number, voice: SheetVoice): SheetBlock[] {
  const words = wordsIn(handoverWords, voice.language);
  if (stop + warn === 0) return [];
  return [
    { kind: 'heading', text: words.open },
    {
      kind: 'text',
      tone: stop > 0 ? 'strong' : 'plain',
      text: filled(words.openText, { stop: String(stop), warn: String(warn) }),
    },
  ];
}
