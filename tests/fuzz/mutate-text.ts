import type { Seeded } from './seeded.ts';

const oddities = [
  'null',
  'NaN',
  '1e999',
  '-1',
  '0',
  '1e-320',
  '""',
  '[]',
  '{}',
  '"__proto__"',
  '\u0000',
  '\uFEFF',
  '\uD800',
  ',',
  '"',
  '}',
  ']',
  '9'.repeat(400),
  '[['.repeat(300),
  '1,5',
  ';',
  '\t',
  '\r\n',
];

/** A text with one to four faults: cut, flipped, doubled, or with something odd put in. */
export function mutateText(text: string, random: Seeded): string {
  let result = text;
  const faults = 1 + random.below(4);
  for (let index = 0; index < faults; index += 1) {
    const at = random.below(result.length + 1);
    const end = Math.min(result.length, at + random.below(40));
    const number = /-?\d+(?:\.\d+)?/g;
    switch (random.below(6)) {
      case 0:
        result = result.slice(0, at);
        break;
      case 1: {
        const code = result.charCodeAt(at) ^ (1 << random.below(7));
        result =
          result.slice(0, at) +
          String.fromCharCode(Number.isNaN(code) ? 0 : code) +
          result.slice(at + 1);
        break;
      }
      case 2:
        result = result.slice(0, end) + result.slice(at);
        break;
      case 3:
        result = result.slice(0, at) + result.slice(end);
        break;
      case 4:
        result = result.slice(0, at) + random.pick(oddities) + result.slice(end);
        break;
      default: {
        number.lastIndex = at;
        const found = number.exec(result);
        if (found !== null)
          result =
            result.slice(0, found.index) +
            random.pick(oddities) +
            result.slice(found.index + found[0].length);
      }
    }
  }
  return result;
}
