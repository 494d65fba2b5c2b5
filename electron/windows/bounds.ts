export type Bounds = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

export const smallestWindow = { width: 900, height: 600 } as const;
export const usualWindow = { width: 1360, height: 880 } as const;
/** Distance of a further window from the one before it [px]. */
const stepPx = 32;

const overlap = (one: Bounds, other: Bounds): number => {
  const width = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const height = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return width > 0 && height > 0 ? width * height : 0;
};

const clamp = (value: number, low: number, high: number): number =>
  Math.max(low, Math.min(value, high));

/**
 * Bounds that lie wholly on one screen: the one most of the window was on, or the first one when
 * that screen is gone. A window larger than the screen is made to fit.
 *
 * @param areas work areas of the screens [px], the main one first
 */
export const keepOnScreen = (wanted: Bounds, areas: readonly Bounds[]): Bounds => {
  const [first] = areas;
  if (first === undefined) return wanted;
  const area = areas.reduce(
    (best, next) => (overlap(wanted, next) > overlap(wanted, best) ? next : best),
    first,
  );
  const width = Math.min(wanted.width, area.width);
  const height = Math.min(wanted.height, area.height);
  return {
    x: Math.round(clamp(wanted.x, area.x, area.x + area.width - width)),
    y: Math.round(clamp(wanted.y, area.y, area.y + area.height - height)),
    width: Math.round(width),
    height: Math.round(height),
  };
};

/** Bounds for a window that was never placed: in the middle of the main screen. */
export const centred = (area: Bounds): Bounds => ({
  x: area.x + (area.width - usualWindow.width) / 2,
  y: area.y + (area.height - usualWindow.height) / 2,
  ...usualWindow,
});

/** Bounds of a further window: a step away from the one in front. */
export const beside = (bounds: Bounds): Bounds => ({
  ...bounds,
  x: bounds.x + stepPx,
  y: bounds.y + stepPx,
});
