type Load = () => Promise<unknown>;

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

/** Begins to fetch ahead: called when everything that is on screen is there. */
export function startFetchingAhead(): void {
  if (isFetching) return;
  isFetching = true;
  fetchNext();
}

let isBusy = false;
function fetchNext(): void {
  if (isBusy) return;
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
