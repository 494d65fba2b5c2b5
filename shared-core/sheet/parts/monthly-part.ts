import { chemistryTraits } from '../../battery/chemistry.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetPart } from '../sheet.ts';
import { monthlyWords } from '../words/check-words.ts';
import { careLine } from './care-block.ts';

/** Blocks of one string that lie further apart at rest than this deserve a look [V]. Common practice, no source. */
const apartV = 0.15;

/** The monthly check list with this machine's own figures. */
export function monthlyPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(monthlyWords, voice.language);
  const { plan, option, headline, wiring } = facts;
  const { pack } = option;
  const { study, outing, spread } = headline;
  const { family } = chemistryTraits[pack.block.chemistry];
  const ratings = [...new Set(wiring.branches.flatMap(({ fuse }) => fuse?.ratedA ?? []))]
    .toSorted((one, other) => one - other)
    .map((rating) => voice.quantity(rating, 'A'));
  const blockV = study.fullRestVoltageV / pack.seriesCount;
  const several = pack.seriesCount * pack.parallelCount > 1;
  const hours = study.chargerMatch?.hoursToFull ?? null;
  const item = (text: string, hint?: string) => (hint === undefined ? { text } : { text, hint });
  return {
    id: 'monthly',
    title: words.title,
    lead: words.lead,
    wide: false,
    blocks: [
      careLine(voice),
      { kind: 'heading', text: words.look },
      {
        kind: 'checks',
        items: [
          item(words.bay),
          item(words.terminals),
          ...(pack.block.chemistry === 'flooded' ? [item(words.acid)] : []),
          item(words.wires),
          item(words.connectors),
          ...(ratings.length === 0
            ? []
            : [item(filled(words.fuses, { ratings: ratings.join(', ') }))]),
          item(words.tyres),
        ],
      },
      { kind: 'heading', text: words.measure },
      {
        kind: 'checks',
        items: [
          several
            ? item(
                words.rest,
                filled(words.restHint, {
                  volts: voice.quantity(blockV, 'V'),
                  apart: voice.quantity(family === 'lead' ? apartV : apartV / 2, 'V', 2),
                }),
              )
            : item(
                words.sealed,
                filled(words.sealedHint, { volts: voice.quantity(study.fullRestVoltageV, 'V') }),
              ),
          item(
            filled(words.minutes, { outing: outing.name }),
            filled(words.minutesHint, {
              planned: voice.minutes(study.run.runTimeMin),
              low: voice.minutes(spread?.low.value ?? 0.8 * study.run.runTimeMin),
            }),
          ),
          ...(hours === null
            ? []
            : [
                item(
                  words.green,
                  filled(words.greenHint, { hours: voice.quantity(hours, 'h', 2) }),
                ),
              ]),
        ],
      },
      { kind: 'heading', text: words.try },
      {
        kind: 'checks',
        items: [
          item(words.isolator),
          item(words.brake),
          item(words.throttle),
          ...(option.charger === null ? [] : [item(words.inhibit)]),
          ...(plan.machine.accessories.length === 0 ? [] : [item(words.lights)]),
        ],
      },
      { kind: 'text', tone: 'strong', text: words.stop },
      { kind: 'blanks', labels: [words.months, words.months, words.months] },
    ],
  };
}
