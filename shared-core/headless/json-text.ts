/** One JSON document for standard output. Typed arrays become lists; what JSON cannot say becomes null. */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(
    value,
    (_key, entry: unknown) => (entry instanceof Float64Array ? [...entry] : entry),
    2,
  )}\n`;
}
