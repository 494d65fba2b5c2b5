/** Which mark the user's own writing puts before the decimals. */
export type DecimalMark = '.' | ',';

export type NumberReading =
  | { readonly kind: 'number'; readonly value: number }
  /** Two readings are possible; the user must say which one he means. */
  | { readonly kind: 'ambiguous'; readonly readings: readonly [decimal: number, thousands: number] }
  | { readonly kind: 'not-a-number' };

const notANumber: NumberReading = { kind: 'not-a-number' };

/**
 * Reads a typed number with a point or a comma as decimal mark.
 *
 * A single mark followed by exactly three digits (`1,234`) could also group thousands. It is a question unless the mark
 * is the user's own decimal mark (a point where his is not known), or the whole part is 0 or longer than a group.
 *
 * @param text digits with optional sign, marks, spaces or apostrophes between groups, exponent; or a fraction `1/2`
 * @param decimalMark the user's own mark, where known
 */
export function parseNumber(text: string, decimalMark?: DecimalMark): NumberReading {
  const plain = text.trim().replace(/^[−–]/, '-');
  const fraction = /^([+-]?)(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(plain);
  if (fraction !== null) {
    const [, sign, whole = '0', top, bottom] = fraction;
    const value = Number(whole) + Number(top) / Number(bottom);
    return Number.isFinite(value)
      ? { kind: 'number', value: sign === '-' ? -value : value }
      : notANumber;
  }
  const parts =
    /^([+-]?)([\d.,'’\u00A0\u202F ]*\d|[.,]\d[\d]*|\d[\d.,'’\u00A0\u202F ]*)(e[+-]?\d+)?$/i.exec(
      plain,
    );
  if (parts === null) return notANumber;
  const [, sign = '', body = '', exponent = ''] = parts;
  const finish = (digits: string) => Number(sign + digits + exponent);
  const marks = [...body.matchAll(/[.,]/g)].map((match) => match[0]);
  const spaced = /['’\u00A0\u202F ]/.test(body);
  if (spaced && !/^\d{1,3}(['’\u00A0\u202F ]\d{3})+([.,]\d*)?$/.test(body)) return notANumber;
  const digits = body.replaceAll(/['’\u00A0\u202F ]/g, '');
  const last = marks.at(-1);
  if (last === undefined) return checked(finish(digits));
  const same = marks.every((mark) => mark === last);
  if (marks.length === 1) {
    const [whole = '', decimals = ''] = digits.split(last);
    const decimal = finish(`${whole}.${decimals}`);
    const grouped =
      !spaced && exponent === '' && /^[1-9]\d{0,2}$/.test(whole) && decimals.length === 3;
    if (grouped && last !== (decimalMark ?? '.')) {
      return { kind: 'ambiguous', readings: [decimal, finish(whole + decimals)] };
    }
    return checked(decimal);
  }
  const groups = digits.slice(0, same ? undefined : digits.lastIndexOf(last));
  const mark = marks[0]!;
  const wellGrouped =
    marks.slice(0, same ? undefined : -1).every((each) => each === mark) &&
    groups.split(mark).every((group, index) => (index === 0 ? /^\d{1,3}$/ : /^\d{3}$/).test(group));
  if (!wellGrouped) return notANumber;
  const decimals = same ? '' : `.${digits.slice(digits.lastIndexOf(last) + 1)}`;
  return checked(finish(groups.replaceAll(mark, '') + decimals));
}

function checked(value: number): NumberReading {
  return Number.isFinite(value) ? { kind: 'number', value } : notANumber;
}
