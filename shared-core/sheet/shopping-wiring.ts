import type { WiringBranch } from '../plan/schema/wiring-branch.ts';
import { checkSwitches, formatConductor } from '../wiring/index.ts';
import type { SheetFacts } from './sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from './sheet-voice.ts';
import type { ShoppingLine } from './shopping-lines.ts';
import { branchCopies, cutLengthMm, lineKind, wireEnd } from './wire-ends.ts';
import { fuseClassWords, switchKindWords } from './words/shared-words.ts';
import { shoppingWords } from './words/shopping-words.ts';
import { wireWords } from './words/wire-words.ts';

/** Adds up lines that ask for the same thing. */
export function joinLines(lines: readonly ShoppingLine[]): ShoppingLine[] {
  const joined = new Map<string, ShoppingLine>();
  for (const line of lines) {
    const key = JSON.stringify([line.item, line.specification, line.unit]);
    const known = joined.get(key);
    joined.set(
      key,
      known === undefined ? line : { ...known, quantity: known.quantity + line.quantity },
    );
  }
  return [...joined.values()];
}

/** Fuses, switches, connectors, wire and ends, as the wiring asks for them. */
export function wiringLines(facts: SheetFacts, voice: SheetVoice): ShoppingLine[] {
  const { wiring } = facts;
  const each = (make: (branch: WiringBranch, copies: number) => ShoppingLine[]): ShoppingLine[] =>
    joinLines(
      wiring.branches.flatMap((branch) =>
        make(branch, branchCopies(branch, wiring.devices, facts.option.pack.parallelCount)),
      ),
    );
  return [
    ...each((branch, copies) => fuseLines(branch, copies, facts, voice)),
    ...each((branch, copies) => switchLines(branch, copies, voice)),
    ...prechargeLines(facts, voice),
    ...each((branch, copies) => wireLines(branch, copies, facts, voice)).map(withOffcuts),
    ...each((branch, copies) => endLines(branch, copies, facts, voice)),
  ];
}

/** A tenth more, up to the next half metre. */
function withOffcuts(line: ShoppingLine): ShoppingLine {
  return { ...line, quantity: Math.ceil(line.quantity * 1.1 * 2) / 2 };
}

function fuseLines(
  { fuse }: WiringBranch,
  copies: number,
  { wiringStudy }: SheetFacts,
  voice: SheetVoice,
): ShoppingLine[] {
  if (fuse === null) return [];
  const words = wordsIn(shoppingWords, voice.language);
  const kind = fuseClassWords[fuse.class][voice.language];
  const rating = voice.quantity(fuse.ratedA, 'A');
  const line = { quantity: copies, unit: words.pieces, priceEach: null };
  return [
    {
      ...line,
      item: words.fuse,
      specification: filled(words.fuseSpec, {
        kind,
        rating,
        volts: voice.quantity(fuse.ratedVoltageV ?? wiringStudy.highestVoltageV, 'V'),
        breaking: fuse.breakingA === null ? words.unknown : voice.quantity(fuse.breakingA, 'A', 4),
      }),
    },
    { ...line, item: words.holder, specification: filled(words.holderSpec, { kind, rating }) },
  ];
}

function switchLines(
  { switchgear, connector }: WiringBranch,
  copies: number,
  voice: SheetVoice,
): ShoppingLine[] {
  const words = wordsIn(shoppingWords, voice.language);
  const known = (value: number | null, symbol: string) =>
    value === null ? words.unknown : voice.quantity(value, symbol);
  const line = { quantity: copies, unit: words.pieces, priceEach: null };
  return [
    ...(switchgear === null
      ? []
      : [
          {
            ...line,
            item: capital(switchKindWords[switchgear.kind][voice.language]),
            specification: filled(words.switchSpec, {
              volts: known(switchgear.ratedVoltageV, 'V'),
              current: known(switchgear.ratedA, 'A'),
              breaking: known(switchgear.breakingA, 'A'),
            }),
          },
        ]),
    ...(connector === null
      ? []
      : [
          {
            ...line,
            item: words.connector,
            specification: filled(words.connectorSpec, {
              current: known(connector.ratedA, 'A'),
              volts: known(connector.ratedVoltageV, 'V'),
            }),
          },
        ]),
  ];
}

function prechargeLines({ wiring, wiringStudy }: SheetFacts, voice: SheetVoice): ShoppingLine[] {
  const words = wordsIn(shoppingWords, voice.language);
  return checkSwitches(wiringStudy, wiring.branches).flatMap(({ precharge }) =>
    precharge === null || precharge.fitted !== null
      ? []
      : [
          {
            item: words.resistor,
            specification: filled(words.resistorSpec, {
              ohm: voice.quantity(precharge.advised.resistanceOhm, 'Ω', 2),
              watts: voice.quantity(precharge.advised.peakW, 'W', 2),
              seconds: voice.quantity(precharge.advised.timeS, 's', 2),
            }),
            quantity: 1,
            unit: words.pieces,
            priceEach: null,
          },
        ],
  );
}

function wireLines(
  branch: WiringBranch,
  copies: number,
  { wiring, wiringStudy }: SheetFacts,
  voice: SheetVoice,
): ShoppingLine[] {
  const words = wordsIn(shoppingWords, voice.language);
  const wires = wordsIn(wireWords, voice.language);
  const study = wiringStudy.branches.find(({ id }) => id === branch.id);
  if (study === undefined || branch.lengthM === 0) return [];
  const wire = formatConductor(study.conductor, voice.language);
  const colours =
    lineKind(branch, wiring.devices) === 'motor'
      ? [wires.motorOne, wires.motorTwo]
      : [wires.red, wires.black];
  return colours.map((colour) => ({
    item: words.wire,
    specification: `${filled(words.wireSpec, { wire, celsius: voice.quantity(branch.insulationC, '°C') })}, ${colour}`,
    quantity: (copies * cutLengthMm(branch.lengthM)) / 1000,
    unit: 'm',
    priceEach: null,
  }));
}

function endLines(
  branch: WiringBranch,
  copies: number,
  { wiring, wiringStudy }: SheetFacts,
  voice: SheetVoice,
): ShoppingLine[] {
  const words = wordsIn(shoppingWords, voice.language);
  const study = wiringStudy.branches.find(({ id }) => id === branch.id);
  if (study === undefined) return [];
  const wire = formatConductor(study.conductor, voice.language);
  return [branch.from, branch.to].map((id) => ({
    item: words[wireEnd(wiring.devices.find((device) => device.id === id))],
    specification: filled(words.endSpec, { wire }),
    quantity: 2 * copies,
    unit: words.pieces,
    priceEach: null,
  }));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
