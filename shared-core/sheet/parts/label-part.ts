import { chemistryTraits } from '../../battery/chemistry.ts';
import { cardWords } from '../../week/card-words.ts';
import { planHash, shortHash } from '../plan-hash.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetPart } from '../sheet.ts';
import { labelWords } from '../words/label-words.ts';

/** Two cards to cut out: one for the pack, one for the charge port. */
export function labelPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(labelWords, voice.language);
  const { plan, option, headline, wiring, wiringStudy } = facts;
  const { pack, charger } = option;
  const { study } = headline;
  const { block } = pack;
  const chemistry = cardWords[voice.language].chemistryNames[block.chemistry];
  const { family } = chemistryTraits[block.chemistry];
  const main = mainFuseA(facts);
  const shortA = Math.max(0, ...wiringStudy.branches.map(({ faultNearA }) => faultNearA));
  const { cutoffVoltageV } = option.controller ?? plan.machine.controller;
  const chargeA =
    charger === null
      ? null
      : Math.min(
          charger.currentA,
          block.maximumChargeA === null ? Infinity : block.maximumChargeA * pack.parallelCount,
          option.portLimitA ?? Infinity,
        );
  return {
    id: 'label',
    title: words.title,
    lead: words.lead,
    wide: false,
    blocks: [
      {
        kind: 'label',
        title: filled(words.packTitle, { machine: plan.machine.name }),
        big: filled(words.big, {
          volts: voice.quantity(study.nominalVoltageV, 'V'),
          chemistry,
        }),
        rows: [
          {
            label: words.blocks,
            value: `${pack.seriesCount} S × ${pack.parallelCount} P, ${block.name}`,
          },
          {
            label: words.capacity,
            value: `${voice.quantity(study.capacityAh, 'A·h')}, ${voice.quantity(study.energyWh, 'W·h')}`,
          },
          {
            label: words.range,
            value: `${voice.number(cutoffVoltageV)} / ${voice.quantity(study.fullRestVoltageV, 'V')}`,
          },
          {
            label: words.mainFuse,
            value: main === null ? words.noFuse : voice.quantity(main, 'A'),
          },
          ...(wiring.branches.length === 0
            ? []
            : [{ label: words.short, value: voice.quantity(shortA, 'A', 2) }]),
          { label: words.made, value: shortHash(planHash(plan)) },
          { label: words.installed, value: words.line },
        ],
        warnings: [
          words.shortWarning,
          words.isolate,
          family === 'lead' ? words.lead1 : words.lithium1,
          words.code,
        ],
      },
      {
        kind: 'label',
        title: `${plan.machine.name}: ${words.chargeTitle}`,
        big:
          charger === null
            ? words.noCharger
            : study.chargerMatch?.verdict === 'misfits'
              ? words.misfit
              : filled(words.chargeOnly, {
                  volts: `${voice.quantity(charger.endVoltageV ?? study.highestChargeVoltageV, 'V', 4)}, ${chemistry}`,
                }),
        rows:
          charger === null
            ? []
            : [
                { label: words.charger, value: charger.name },
                { label: words.current, value: voice.quantity(chargeA, 'A') },
                {
                  label: words.hours,
                  value: voice.quantity(study.chargerMatch?.hoursToFull, 'h', 2),
                },
              ],
        warnings: [words.other, family === 'lead' ? words.lead1 : words.lithium1, words.code],
      },
    ],
  };
}

/** Rating of the fuse behind the pack's terminals: of the wiring, else of the pack [A]; null without one. */
export function mainFuseA({ wiring, option }: SheetFacts): number | null {
  const kindOf = (id: string) => wiring.devices.find((device) => device.id === id)?.kind;
  const ratings = wiring.branches.flatMap(({ from, fuse }) =>
    fuse !== null && (kindOf(from) === 'pack' || kindOf(from) === 'string') ? [fuse.ratedA] : [],
  );
  return ratings.length > 0 ? Math.max(...ratings) : option.pack.mainFuseA;
}
