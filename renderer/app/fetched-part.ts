import { useEffect, useState, type ComponentType } from 'react';

/** A part of the window whose code is fetched when it is first shown. */
export interface FetchedPart<Props> {
  readonly load: () => Promise<ComponentType<Props>>;
  loaded: ComponentType<Props> | null;
}

export const fetchedPart = <Props extends object = object>(
  load: () => Promise<ComponentType<Props>>,
): FetchedPart<Props> => ({ load, loaded: null });

/**
 * The component, or null until it is there. A suspended part would be rendered at a priority that every other update
 * interrupts: while figures keep coming in, it would never appear. A failure to fetch goes to the boundary around.
 */
export function useFetchedPart<Props>(part: FetchedPart<Props>): ComponentType<Props> | null {
  const [, setCount] = useState(0);
  const [failure, setFailure] = useState<unknown>(null);
  useEffect(() => {
    if (part.loaded !== null) return undefined;
    let isWanted = true;
    part.load().then(
      (component) => {
        part.loaded = component;
        if (isWanted) setCount((count) => count + 1);
      },
      (error: unknown) => {
        if (isWanted) setFailure(error);
      },
    );
    return () => {
      isWanted = false;
    };
  }, [part]);
  if (failure !== null) throw failure;
  return part.loaded;
}
