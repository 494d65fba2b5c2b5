/** A window that is not shown paints nothing; then this long [ms] is waited. */
const longestMs = 100;

/** Calls once what has been rendered is on screen. */
export function afterPaint(call: () => void): void {
  let isCalled = false;
  const once = (): void => {
    if (isCalled) return;
    isCalled = true;
    clearTimeout(timer);
    call();
  };
  const timer = setTimeout(once, longestMs);
  requestAnimationFrame(() => setTimeout(once));
}
