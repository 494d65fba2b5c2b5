import type { Command, HostKind, Platform } from './command.ts';

/** Keys of a command in a host, or null where it has none. */
export const keysOf = (command: Command, host: HostKind): string | null => {
  if (host === 'browser' && command.browserKeys !== undefined) return command.browserKeys;
  return command.keys ?? null;
};

const macSigns: Readonly<Record<string, string>> = { Mod: '⌘', Shift: '⇧', Alt: '⌥', Plus: '+' };
const otherWords: Readonly<Record<string, string>> = { Mod: 'Ctrl', Plus: '+' };

/** Keys as people read them on that platform: `⇧⌘S` or `Ctrl+Shift+S`. */
export const describeKeys = (keys: string, platform: Platform): string => {
  const parts = keys.split('+');
  if (platform !== 'mac') return parts.map((part) => otherWords[part] ?? part).join('+');
  const order = ['Alt', 'Shift', 'Mod'];
  const held = order.filter((part) => parts.includes(part));
  const struck = parts.filter((part) => !order.includes(part));
  return [...held, ...struck].map((part) => macSigns[part] ?? part).join('');
};

/** The parts of a keyboard event that matter here, so that the core needs no DOM. */
export type KeyStroke = {
  readonly key: string;
  /** Physical key, such as `Digit1`; a Mac types another sign with Alt held. */
  readonly code: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
};

const struckKey = (keys: string): string => {
  const last = keys.split('+').at(-1) ?? '';
  return last === 'Plus' ? '+' : last;
};

/** True when the stroke is exactly those keys: no further modifier held. */
export const strokeMatches = (stroke: KeyStroke, keys: string, platform: Platform): boolean => {
  const parts = keys.split('+').slice(0, -1);
  const modifier = platform === 'mac' ? stroke.metaKey : stroke.ctrlKey;
  const otherModifier = platform === 'mac' ? stroke.ctrlKey : stroke.metaKey;
  const wanted = struckKey(keys);
  const letter = stroke.key.toUpperCase() === wanted.toUpperCase();
  const physical = stroke.code === `Digit${wanted}` || stroke.code === `Key${wanted}`;
  return (
    modifier === parts.includes('Mod') &&
    !otherModifier &&
    stroke.altKey === parts.includes('Alt') &&
    // A plus or a slash needs Shift on many layouts, so there Shift is free.
    (stroke.shiftKey === parts.includes('Shift') || wanted === '+' || wanted === '/') &&
    (letter || (stroke.altKey && physical))
  );
};
