import { defaultSpreadWishes } from '../../compare/spread/spread-wishes.ts';
import { spreadPlan } from '../../compare/spread/spread-plan.ts';
import { mustStop } from '../../findings/plan-findings.ts';
import type { Finding } from '../../findings/finding.ts';
import { joinFindings, type JoinedFinding } from '../../findings/join-findings.ts';
import { mergeFindings } from '../../findings/merge-findings.ts';
import { spreadFindings } from '../../findings/spread-findings.ts';
import { weekFindings } from '../../findings/week-findings.ts';
import type { Language } from '../../plan/language.ts';
import { studyPlan } from '../../study/study-plan.ts';
import { findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan } from '../load-plan.ts';
import { jsonOption, languageOption, outingOption, refuse, type Verb } from '../verb.ts';

export const findingsVerb: Verb = {
  name: 'findings',
  usage: 'FILE [options]',
  summary: 'print what the plan must be warned of; exit code 3 when something must be mended first',
  details: [
    'stop: mend before use. warn: mend soon. note: know it. A question stands where an input is missing.',
    'Notes that rest on the spread of the run times (RUN-1: only the low end is below the goal) need --spread.',
  ],
  options: [
    jsonOption,
    outingOption,
    languageOption,
    {
      name: '--spread',
      meaning: 'also draw the spread of every option, as the window does, with what it has to note',
    },
  ],
  arguments: [1, 1],
  async run({ positional: [path], value, has, host }) {
    const language = value('--language') ?? 'en';
    if (!isLanguage(language)) return refuse(`--language: ${language} is not known. Use en or de.`);
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const outing = findOuting(loaded.plan, value('--outing'));
    if (!outing.ok) return refuse(outing.line);
    const { plan } = loaded;
    const outingId = outing.outing.id;
    const study = studyPlan(plan, outingId, language);
    const ofSpread = has('--spread')
      ? spreadFindings(
          plan,
          study.options,
          spreadPlan(plan, { ...defaultSpreadWishes, outingId }),
          language,
        )
      : [];
    const findings = mergeFindings(
      mergeFindings(study.findings, ofSpread),
      weekFindings(plan, language, outingId),
    );
    const joined = joinFindings(findings);
    if (has('--json')) {
      const counts = countsOf(joined.map(({ finding }) => finding));
      host.out(jsonText({ outing: outingId, counts, findings }));
    } else host.out(joined.map(paragraphOf).join('\n') + countLine(joined));
    return { exit: mustStop(findings) ? 3 : 0 };
  },
};

export function isLanguage(word: string): word is Language {
  return word === 'en' || word === 'de';
}

/** How many of these are of each severity, and how many questions. */
export function countsOf(
  findings: readonly Finding[],
): Record<'stop' | 'warn' | 'note' | 'notChecked', number> {
  const count = (of: Finding['severity']): number =>
    findings.filter((finding) => finding.status === 'finding' && finding.severity === of).length;
  return {
    stop: count('stop'),
    warn: count('warn'),
    note: count('note'),
    notChecked: findings.filter((finding) => finding.status === 'not-checked').length,
  };
}

function paragraphOf({ finding, shares, sameWords, cures }: JoinedFinding): string {
  const mark = finding.status === 'finding' ? finding.severity : 'question';
  const whom = shares.flatMap(({ optionId }) => (optionId === null ? [] : [optionId]));
  const words = sameWords
    ? [`  ${finding.what}`]
    : shares.map((share) => `  ${share.optionId}: ${share.finding.what}`);
  const remedies = new Set(shares.map((share) => share.finding.remedy));
  const lines = [
    `${finding.id}  ${mark}${whom.length === 0 ? '' : `  ${whom.join(', ')}`}`,
    ...words,
    `  ${finding.consequence}`,
    ...[...remedies].map((remedy) => `  ${remedy}`),
    ...cures.map(({ does }) => `  > ${does}`),
    `  [${finding.sourceClass}] ${finding.source}`,
  ];
  return `${lines.join('\n')}\n`;
}

function countLine(joined: readonly JoinedFinding[]): string {
  const { stop, warn, note, notChecked } = countsOf(joined.map(({ finding }) => finding));
  return `\n${stop} stop, ${warn} warn, ${note} note, ${notChecked} not checked\n`;
}
