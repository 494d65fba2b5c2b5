import { useEffect, type RefObject } from 'react';
import type { Chart } from 'chart.js';
import { inIdleTime } from '../state/fetch-ahead.ts';

let isReady = false;
const fetchGestures = async (): Promise<void> => {
  const { registerGestures } = await import('./register-gestures.ts');
  registerGestures();
  isReady = true;
};

/**
 * Gives a chart zoom and pan by wheel, drag and pinch. They are fetched behind the first chart; buttons and keys work
 * without them.
 */
export function useGestures(chart: RefObject<Pick<Chart, 'update'> | null>): void {
  useEffect(() => {
    if (isReady) return undefined;
    let isWanted = true;
    inIdleTime(() => {
      fetchGestures().then(
        () => isWanted && chart.current?.update('none'),
        () => undefined,
      );
    });
    return () => {
      isWanted = false;
    };
  }, [chart]);
}
