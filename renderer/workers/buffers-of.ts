/**
 * Every buffer behind the typed arrays of a result, once each, so that a message hands them over instead of copying.
 * Empty ones stay: results share them, and a buffer handed over once could not be sent again.
 */
export function buffersOf(root: unknown): ArrayBuffer[] {
  const buffers = new Set<ArrayBuffer>();
  const seen = new Set<object>();
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || seen.has(value)) return;
    seen.add(value);
    if (ArrayBuffer.isView(value)) {
      if (value.buffer instanceof ArrayBuffer && value.buffer.byteLength > 0)
        buffers.add(value.buffer);
      return;
    }
    for (const entry of Object.values(value)) visit(entry);
  };
  visit(root);
  return [...buffers];
}
