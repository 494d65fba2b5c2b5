import type { HeadlessHost } from './host.ts';
import type { Verb, VerbCall } from './verb.ts';

export type ArgumentReading =
  | { readonly ok: true; readonly call: VerbCall }
  | { readonly ok: false; readonly line: string };

/** Takes the words after the verb apart. `--name value` and `--name=value` are the same; `--` ends the options. */
export function readArguments(
  verb: Verb,
  words: readonly string[],
  host: HeadlessHost,
): ArgumentReading {
  const positional: string[] = [];
  const given = new Map<string, string[]>();
  let optionsOver = false;
  for (let index = 0; index < words.length; index += 1) {
    const word = words[index]!;
    if (word === '--' && !optionsOver) {
      optionsOver = true;
      continue;
    }
    if (optionsOver || !word.startsWith('--')) {
      positional.push(word);
      continue;
    }
    const equals = word.indexOf('=');
    const name = equals < 0 ? word : word.slice(0, equals);
    const option = verb.options.find((entry) => entry.name === name);
    if (option === undefined) {
      const known = verb.options.map((entry) => entry.name).join(', ');
      return {
        ok: false,
        line: `${name}: ${verb.name} has no such option. ${known === '' ? 'It has none.' : `Use one of: ${known}.`}`,
      };
    }
    if (option.value === undefined) {
      if (equals >= 0)
        return { ok: false, line: `${name}: takes no value. Leave out what follows "=".` };
      given.set(name, []);
      continue;
    }
    let value = equals < 0 ? undefined : word.slice(equals + 1);
    if (value === undefined) {
      index += 1;
      value = words[index];
    }
    if (value === undefined || value === '') {
      return { ok: false, line: `${name}: the value is missing. Write ${name} ${option.value}.` };
    }
    const before = given.get(name);
    if (before !== undefined && option.repeats !== true) {
      return { ok: false, line: `${name}: given twice. Give it once.` };
    }
    given.set(name, [...(before ?? []), value]);
  }
  const [least, most] = verb.arguments;
  if (positional.length < least) {
    return {
      ok: false,
      line: `${verb.name}: something is missing. Write: ${verb.name} ${verb.usage}.`,
    };
  }
  if (positional.length > most) {
    return {
      ok: false,
      line: `${positional[most]}: one argument too many. Write: ${verb.name} ${verb.usage}.`,
    };
  }
  return {
    ok: true,
    call: {
      positional,
      value: (name) => given.get(name)?.at(-1),
      values: (name) => given.get(name) ?? [],
      has: (name) => given.has(name),
      host,
    },
  };
}
