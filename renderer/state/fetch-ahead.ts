type Load = () => Promise<unknown>;

/** What has been fetched is then run and drawn; that long [ms] nothing else is begun. */
const quietMs = 1000;

const waiting: Load[] = [];
let isFetching = false;

/** Safari knows no idle time. */
export const inIdleTime = (work: () => void): void => {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(work);
  else setTimeout(work, 50);
};

/** Code that some click will ask for: fetched one after the other in idle time, so that the click finds it there. */
export function fetchAhead(load: Load): void {
  waiting.push(load);
  if (isFetching) fetchNext();
}

/** Begins to fetch ahead, a while after everything that is on screen is there. */
export function startFetchingAhead(): void {
  isFetching = true;
  setTimeout(fetchNext, quietMs);
}

let shown = 0;

/** Fetches what is to be on screen now; nothing is fetched ahead meanwhile. */
export async function fetchNow<T>(load: () => Promise<T>): Promise<T> {
  shown += 1;
  try {
    return await load();
  } finally {
    shown -= 1;
    if (isFetching) setTimeout(fetchNext, quietMs);
  }
}

let isBusy = false;
function fetchNext(): void {
  if (isBusy || shown > 0) return;
  const load = waiting.shift();
  if (load === undefined) return;
  isBusy = true;
  inIdleTime(() => {
    // What cannot be fetched now is asked for again by the click itself, which says what went wrong.
    void load()
      .catch(() => undefined)
      .then(() => {
        isBusy = false;
        fetchNext();
      });
  });
}
