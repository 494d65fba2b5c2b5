import type { OptionStudy } from '#core/study/study.ts';
import type { SentOption } from './study-message.ts';

/**
 * Worker's end: numbers the studies and leaves out those of the answer before, whose copies the page still has. An edit
 * mostly changes one option of several, and the runs of the others are long.
 */
export function createOptionSender(): (options: readonly OptionStudy[]) => SentOption[] {
  let sent = new Map<OptionStudy, number>();
  let last = 0;
  return (options) => {
    const answer = options.map((study): SentOption => {
      const known = sent.get(study);
      last += known === undefined ? 1 : 0;
      return known === undefined ? { number: last, study } : { number: known, study: null };
    });
    sent = new Map(options.map((study, index) => [study, answer[index]?.number ?? 0]));
    return answer;
  };
}

/** Page's end: puts the studies left out back in. Must see every answer of its worker, in order. */
export function createOptionReceiver(): (options: readonly SentOption[]) => OptionStudy[] {
  let known = new Map<number, OptionStudy>();
  return (options) => {
    const now = new Map<number, OptionStudy>();
    for (const { number, study } of options) {
      const own = study ?? known.get(number);
      if (own === undefined) throw new Error(`The study ${number} of an option never came`);
      now.set(number, own);
    }
    known = now;
    return options.flatMap(({ number }) => known.get(number) ?? []);
  };
}
