/** A column of numbers that grows without copying the whole of it each time. */
export interface GrowingColumn {
  readonly push: (value: number) => void;
  readonly length: () => number;
  readonly toArray: () => Float64Array;
}

/** Single precision halves the memory of a long log; time keeps double. */
export function growingColumn(precision: 'single' | 'double'): GrowingColumn {
  const make = (size: number) =>
    precision === 'single' ? new Float32Array(size) : new Float64Array(size);
  const chunkSize = 65536;
  const chunks: (Float32Array | Float64Array)[] = [];
  // Many short runs must not each cost a whole chunk.
  let last = make(64);
  let used = 0;
  return {
    push: (value) => {
      if (used === last.length && used < chunkSize) {
        const longer = make(Math.min(chunkSize, used * 4));
        longer.set(last);
        last = longer;
      }
      if (used === chunkSize) {
        chunks.push(last);
        last = make(chunkSize);
        used = 0;
      }
      last[used] = value;
      used += 1;
    },
    length: () => chunks.length * chunkSize + used,
    toArray: () => {
      const all = new Float64Array(chunks.length * chunkSize + used);
      chunks.forEach((chunk, index) => all.set(chunk, index * chunkSize));
      all.set(last.subarray(0, used), chunks.length * chunkSize);
      return all;
    },
  };
}
