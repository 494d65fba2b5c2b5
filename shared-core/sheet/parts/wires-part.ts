import { formatConductor } from '../../wiring/index.ts';
import type { WiringBranch } from '../../plan/schema/wiring-branch.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetCell, SheetPart } from '../sheet.ts';
import { branchCopies, cutLengthMm, lineKind, wireEnd } from '../wire-ends.ts';
import { buildWords } from '../words/build-words.ts';
import { switchKindWords } from '../words/shared-words.ts';
import { wireWords } from '../words/wire-words.ts';
import { careLine } from './care-block.ts';

/** The wire list: one row for each wire to cut. */
export function wiresPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(wireWords, voice.language);
  const { wiring } = facts;
  return {
    id: 'wires',
    title: words.title,
    lead: words.lead,
    wide: true,
    blocks: [
      careLine(voice),
      ...(facts.wiringProposed
        ? ([{ kind: 'text', tone: 'soft', text: buildWords.proposed[voice.language] }] as const)
        : []),
      {
        kind: 'table',
        id: 'wires',
        caption: words.title,
        columns: [
          { id: 'number', label: words.number, tight: true },
          { id: 'branch', label: words.branch },
          { id: 'from', label: words.from },
          { id: 'to', label: words.to },
          { id: 'gauge', label: words.gauge, tight: true },
          { id: 'insulation', label: words.insulation, unit: '°C', align: 'end' },
          { id: 'colour', label: words.colour, tight: true },
          { id: 'length', label: words.length, unit: 'm', align: 'end' },
          { id: 'cut', label: words.cut, unit: 'mm', align: 'end' },
          { id: 'count', label: words.count, align: 'end' },
          { id: 'terminals', label: words.terminals },
          { id: 'fuse', label: words.fuse, tight: true },
          { id: 'fitted', label: words.fitted },
          { id: 'done', label: words.done, byHand: true },
        ],
        rows: wiring.branches.flatMap((branch, index) => branchRows(facts, branch, index, voice)),
      },
      { kind: 'text', tone: 'soft', text: words.rule },
    ],
  };
}

/** Supply and return of a branch. Fuse and switch sit in the supply. */
function branchRows(
  facts: SheetFacts,
  branch: WiringBranch,
  index: number,
  voice: SheetVoice,
): SheetCell[][] {
  const words = wordsIn(wireWords, voice.language);
  const { wiring, wiringStudy, option } = facts;
  const device = (id: string) => wiring.devices.find((each) => each.id === id);
  const study = wiringStudy.branches.find(({ id }) => id === branch.id);
  const wire = study === undefined ? '–' : formatConductor(study.conductor, voice.language);
  const gauge = study?.conductorAssumed === true ? filled(words.assumed, { wire }) : wire;
  const copies = branchCopies(branch, wiring.devices, option.pack.parallelCount);
  const end = [...new Set([wireEnd(device(branch.from)), wireEnd(device(branch.to))])]
    .map((kind) => words[kind])
    .join(' – ');
  const cutMm = cutLengthMm(branch.lengthM);
  const colours = {
    pack: [words.red, words.black],
    low: [words.redMark, words.blackMark],
    motor: [words.motorOne, words.motorTwo],
  }[lineKind(branch, wiring.devices)];
  const marks = lineKind(branch, wiring.devices) === 'motor' ? ['A', 'B'] : ['+', '−'];
  return marks.map((mark, side) => [
    `${index + 1}${mark}`,
    branch.name,
    device(branch.from)?.name ?? branch.from,
    device(branch.to)?.name ?? branch.to,
    gauge,
    { text: String(branch.insulationC), value: branch.insulationC },
    colours[side]!,
    { text: voice.number(branch.lengthM), value: branch.lengthM },
    { text: voice.number(cutMm, 4), value: cutMm },
    { text: String(copies), value: copies },
    end,
    side === 0 && branch.fuse !== null ? voice.quantity(branch.fuse.ratedA, 'A') : '',
    side === 0 ? fittedText(branch, voice) : '',
    '',
  ]);
}

function fittedText({ switchgear, connector }: WiringBranch, voice: SheetVoice): string {
  return [
    ...(switchgear === null ? [] : [switchKindWords[switchgear.kind][voice.language]]),
    ...(connector === null ? [] : [connector.name]),
  ]
    .filter((text) => text !== '')
    .join(', ');
}
