export type CloseAnswer = 'close' | 'stay';

/** How long a page may take to say that it has seen the question [ms]. */
const seenWithinMs = 3000;

type Question = {
  readonly id: number;
  readonly settle: (answer: CloseAnswer | 'silent') => void;
  timer: NodeJS.Timeout | null;
};

/**
 * Asks the page of one window whether it may close. The page shows the question itself; a page that
 * hangs or has crashed does not answer in time, and then the shell has to ask.
 */
export const createCloseGuard = (send: (id: number) => void, waitMs = seenWithinMs) => {
  let open: Question | null = null;
  let nextId = 1;
  const end = (question: Question, answer: CloseAnswer | 'silent'): void => {
    if (question.timer !== null) clearTimeout(question.timer);
    if (open === question) open = null;
    question.settle(answer);
  };
  return {
    isAsking: (): boolean => open !== null,
    ask: (): Promise<CloseAnswer | 'silent'> =>
      new Promise((settle) => {
        const question: Question = { id: nextId, settle, timer: null };
        nextId += 1;
        question.timer = setTimeout(() => end(question, 'silent'), waitMs);
        open = question;
        send(question.id);
      }),
    /** The page has the question on screen; from now on the user may take all the time there is. */
    seen: (id: number): void => {
      if (open?.id !== id || open.timer === null) return;
      clearTimeout(open.timer);
      open.timer = null;
    },
    answer: (id: number, answer: CloseAnswer): void => {
      if (open?.id === id) end(open, answer);
    },
    /** The page is gone while the question stood. */
    giveUp: (): void => {
      if (open !== null) end(open, 'silent');
    },
  };
};
export type CloseGuard = ReturnType<typeof createCloseGuard>;
