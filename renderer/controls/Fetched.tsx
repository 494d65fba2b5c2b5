import {
  createElement,
  useCallback,
  useEffect,
  useState,
  type ComponentType,
  type ReactNode,
} from 'react';
import { failureText } from '../state/failure-text.ts';
import { fetchAhead, fetchNow } from '../state/fetch-ahead.ts';
import { showToast } from '../state/toast-store.ts';

/** A part of the window whose code is fetched ahead in idle time, or when it is first shown. */
export interface FetchedPart<Props> {
  readonly load: () => Promise<ComponentType<Props>>;
  loaded: ComponentType<Props> | null;
}

export const fetchedPart = <Props extends object = object>(
  load: () => Promise<ComponentType<Props>>,
): FetchedPart<Props> => {
  const part: FetchedPart<Props> = {
    load: async () => (part.loaded ??= await load()),
    loaded: null,
  };
  fetchAhead(part.load);
  return part;
};

/**
 * The component, or null until it is there. A suspended part would be rendered at a priority that every other update
 * interrupts: while figures keep coming in, it would never appear.
 */
function useFetchedPart<Props>(
  part: FetchedPart<Props>,
  onFailure: (error: unknown) => void,
): ComponentType<Props> | null {
  const [, setCount] = useState(0);
  const isThere = part.loaded !== null;
  useEffect(() => {
    // What comes by being fetched ahead between this rendering and here has to be rendered, too.
    if (isThere) return undefined;
    let isWanted = true;
    fetchNow(part.load).then(
      () => isWanted && setCount((count) => count + 1),
      (error: unknown) => isWanted && onFailure(error),
    );
    return () => {
      isWanted = false;
    };
  }, [part, onFailure, isThere]);
  return part.loaded;
}

interface FetchedProps<Props extends object> {
  readonly part: FetchedPart<Props>;
  readonly props: Props;
  /** What stands there until then. */
  readonly waiting?: ReactNode;
}

/** Shows a part as soon as its code is there. A failure to fetch goes to the boundary around. */
export const Fetched = <Props extends object>({
  part,
  props,
  waiting = null,
}: FetchedProps<Props>) => {
  const [failure, setFailure] = useState<{ readonly error: unknown } | null>(null);
  const fail = useCallback((error: unknown) => setFailure({ error }), []);
  const component = useFetchedPart(part, fail);
  if (failure !== null) throw failure.error;
  return component === null ? waiting : createElement(component, props);
};

const sayFailure = (error: unknown): void => showToast(failureText(error));

/** A component to be used like any other, whose code is fetched. A failure to fetch is said, and nothing is shown. */
export function fetched<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  const part = fetchedPart(load);
  return function FetchedComponent(props: Props) {
    const component = useFetchedPart(part, sayFailure);
    return component === null ? null : createElement(component, props);
  };
}
