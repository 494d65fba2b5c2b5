import type { SheetFacts } from '../sheet-facts.ts';
import { wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetBlock, SheetCell } from '../sheet.ts';
import { buildWords } from '../words/build-words.ts';
import { fuseClassWords } from '../words/shared-words.ts';

/** Every fuse of the wiring with what flows through it and what the wire behind it stands. */
export function fuseBlocks(facts: SheetFacts, voice: SheetVoice): SheetBlock[] {
  const words = wordsIn(buildWords, voice.language);
  const { wiring, wiringStudy, wiringProposed } = facts;
  const figure = (value: number | null, digits = 3): SheetCell => ({
    text: voice.number(value, digits),
    value,
  });
  const rows = wiring.branches.flatMap(({ id, name, fuse }): SheetCell[][] => {
    const study = wiringStudy.branches.find((branch) => branch.id === id);
    if (fuse === null) return [];
    return [
      [
        name,
        fuseClassWords[fuse.class][voice.language],
        figure(fuse.ratedA),
        figure(fuse.ratedVoltageV),
        figure(fuse.breakingA, 4),
        figure(fuse.fromSourceMm, 4),
        figure(study?.continuousA ?? null),
        figure(study?.ampacityA ?? null),
      ],
    ];
  });
  const proposal: SheetBlock[] = wiringProposed
    ? [{ kind: 'text', tone: 'soft', text: words.proposed }]
    : [];
  if (rows.length === 0)
    return [
      { kind: 'heading', text: words.fuses },
      ...proposal,
      { kind: 'text', tone: 'strong', text: words.noFuses },
    ];
  return [
    ...proposal,
    {
      kind: 'table',
      id: 'fuses',
      caption: words.fuses,
      columns: [
        { id: 'place', label: words.fusePlace },
        { id: 'class', label: words.fuseClass },
        { id: 'rating', label: words.rating, unit: 'A', align: 'end' },
        { id: 'voltage', label: words.voltage, unit: 'V', align: 'end' },
        { id: 'breaking', label: words.breaking, unit: 'A', align: 'end' },
        { id: 'from', label: words.fromSource, unit: 'mm', align: 'end' },
        { id: 'lasting', label: words.lasting, unit: 'A', align: 'end' },
        { id: 'wire', label: words.wireStands, unit: 'A', align: 'end' },
      ],
      rows,
    },
  ];
}
