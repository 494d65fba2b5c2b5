import { createElement, useEffect, useState, type ComponentType, type ReactNode } from 'react';

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
function useFetchedPart<Props>(part: FetchedPart<Props>): ComponentType<Props> | null {
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

interface FetchedProps<Props extends object> {
  readonly part: FetchedPart<Props>;
  readonly props: Props;
  /** What stands there until then. */
  readonly waiting?: ReactNode;
}

/** Shows a part as soon as its code is there. */
export const Fetched = <Props extends object>({
  part,
  props,
  waiting = null,
}: FetchedProps<Props>) => {
  const component = useFetchedPart(part);
  return component === null ? waiting : createElement(component, props);
};
