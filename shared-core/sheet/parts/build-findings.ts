import type { SheetFacts } from '../sheet-facts.ts';
import { wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetBlock } from '../sheet.ts';
import { buildWords } from '../words/build-words.ts';
import { severityWords } from '../words/shared-words.ts';

/** What stands open: every finding with its remedy and source, then the questions. */
export function findingBlocks({ findings }: SheetFacts, voice: SheetVoice): SheetBlock[] {
  const words = wordsIn(buildWords, voice.language);
  const standing = findings.filter(({ status }) => status === 'finding');
  const questions = findings.filter(({ status }) => status === 'not-checked');
  return [
    { kind: 'heading', text: words.findings },
    standing.length === 0
      ? { kind: 'text', text: words.noFindings }
      : {
          kind: 'findings',
          items: standing.map(({ id, severity, what, remedy, source }) => ({
            id,
            severity,
            severityWord: severityWords[severity][voice.language],
            what,
            remedy,
            source,
          })),
        },
    ...(questions.length === 0
      ? []
      : ([
          { kind: 'heading', text: words.questions },
          {
            kind: 'list',
            items: [...new Set(questions.map(({ id, what }) => `${id}: ${what}`))],
          },
        ] as const)),
  ];
}
