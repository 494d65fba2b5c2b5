type Expected =
  | 'value'
  | 'value-or-end'
  | 'key'
  | 'key-or-end'
  | 'colon'
  | 'comma-or-end'
  | 'nothing';

const scalar = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

/**
 * Position at which `text` stops being JSON, or its length where it only breaks off too early.
 * JSON.parse knows it too, but not every engine says so in its message.
 */
export function jsonFailure(text: string): number {
  const levels: ('{' | '[')[] = [];
  let expected: Expected = 'value';
  let index = 0;
  const afterValue = (): Expected => (levels.length === 0 ? 'nothing' : 'comma-or-end');
  for (;;) {
    while (index < text.length && ' \t\n\r'.includes(text[index]!)) index += 1;
    if (index >= text.length) return text.length;
    const sign = text[index]!;
    const takesValue: boolean = expected === 'value' || expected === 'value-or-end';
    if (sign === '"' && (takesValue || expected === 'key' || expected === 'key-or-end')) {
      const close = closingQuote(text, index);
      if (text[close] !== '"') return close;
      expected = takesValue ? afterValue() : 'colon';
      index = close + 1;
    } else if ((sign === '{' || sign === '[') && takesValue) {
      levels.push(sign);
      expected = sign === '{' ? 'key-or-end' : 'value-or-end';
      index += 1;
    } else if (sign === '}' || sign === ']') {
      const may =
        expected === 'comma-or-end' || expected === (sign === '}' ? 'key-or-end' : 'value-or-end');
      if (!may || levels.at(-1) !== (sign === '}' ? '{' : '[')) return index;
      levels.pop();
      expected = afterValue();
      index += 1;
    } else if (sign === ',' && expected === 'comma-or-end') {
      expected = levels.at(-1) === '{' ? 'key' : 'value';
      index += 1;
    } else if (sign === ':' && expected === 'colon') {
      expected = 'value';
      index += 1;
    } else {
      scalar.lastIndex = index;
      const found = takesValue ? scalar.exec(text) : null;
      if (found === null)
        return text.length - index < 6 && breaksOff(text.slice(index)) ? text.length : index;
      expected = afterValue();
      index += found[0].length;
    }
  }
}

/** Index of the closing quote, or of the control character or end that stands in its way. */
function closingQuote(text: string, start: number): number {
  for (let index = start + 1; index < text.length; index += 1) {
    const sign = text[index]!;
    if (sign === '\\') index += 1;
    else if (sign === '"' || sign < ' ') return index;
  }
  return text.length;
}

/** Whether `rest` is the beginning of a word or number that the end of the file cut off. */
function breaksOff(rest: string): boolean {
  return rest === '-' || ['true', 'false', 'null'].some((word) => word.startsWith(rest));
}
