import { problemIn, type LogProblem } from '#core/bench/index.ts';
import type { Language } from '#core/plan/language.ts';

/** What is wrong and how to mend it as two sentences, led by what it is about where that helps. */
export function problemSentence(problem: LogProblem, language: Language, about = ''): string {
  const words = problemIn(problem, language);
  const begin = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
  const what = about === '' ? begin(words.problem) : `${about}: ${words.problem}`;
  return `${what}. ${begin(words.remedy)}.`;
}
