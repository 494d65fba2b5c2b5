const formats = new Map<string, Intl.NumberFormat>();

function numberFormat(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale} ${JSON.stringify(options)}`;
  let format = formats.get(key);
  if (format === undefined) {
    // Building a formatter costs far more than using one.
    format = new Intl.NumberFormat(locale, options);
    formats.set(key, format);
  }
  return format;
}

/**
 * A number with a given count of significant digits, trailing zeros dropped: 0.012345 with 3 is `0.0123`.
 * Whole digits are never rounded away: 12345 with 3 is `12,345`, because a reader takes `12,300` for exact.
 *
 * @param value finite number; anything else gives an en dash
 * @param digits significant digits, 1 to 15
 * @param locale BCP 47 tag such as `en` or `de`
 */
export function formatSignificant(value: number, digits: number, locale: string): string {
  if (!Number.isFinite(value)) return '–';
  const whole = Math.abs(value) >= 1 ? Math.floor(Math.log10(Math.abs(value))) + 1 : 0;
  const text = numberFormat(locale, {
    maximumSignificantDigits: Math.min(15, Math.max(digits, whole)),
  }).format(value);
  return text === '-0' ? '0' : text;
}

/** A number with a fixed count of decimals, for columns that must line up. */
export function formatFixed(value: number, decimals: number, locale: string): string {
  if (!Number.isFinite(value)) return '–';
  const rounded = Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value;
  return numberFormat(locale, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  }).format(rounded);
}
