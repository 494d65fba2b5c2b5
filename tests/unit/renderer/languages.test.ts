import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { accessoryParts, blockParts, chargerParts, converterParts } from '#core/library/index.ts';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { nameIn, namedIn } from '#renderer/text/names.ts';
import { learn } from '#renderer/text/spoken.ts';
import { figuresApart } from '../../support/figures-in.ts';

await learn('de');

const folder = join(import.meta.dirname, '../../../renderer/text');
/** What is no words but the way to them. */
const machinery = new Set(['use-text.ts', 'field-words.ts', 'spoken.ts']);

/** Every file of words of the interface. */
const files = await Promise.all(
  readdirSync(folder)
    .filter((file) => file.endsWith('.ts') && !machinery.has(file))
    .map(async (file): Promise<readonly [string, Record<string, unknown>]> => [
      file,
      (await import(join(folder, file))) as Record<string, unknown>,
    ]),
);

interface Pair {
  readonly where: string;
  readonly en: unknown;
  readonly de: unknown;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/** Every place where a sentence stands in both languages, by its path. */
const pairsOf = (where: string, en: unknown, de: unknown): Pair[] =>
  isObject(en)
    ? Object.keys({ ...en, ...(isObject(de) ? de : {}) }).flatMap((key) =>
        pairsOf(`${where}.${key}`, en[key], isObject(de) ? de[key] : undefined),
      )
    : [{ where, en, de }];

const pairs = files.flatMap(([file, module]) =>
  Object.entries(module)
    .filter(([, value]) => isObject(value) && 'en' in value && 'de' in value)
    .flatMap(([name, value]) => {
      const { en, de } = value as { en: unknown; de: unknown };
      return pairsOf(`${file} ${name}`, en, de);
    }),
);

/** The same in both languages: signs, units, trade words of both trades, and names. */
const alike =
  /^[^a-zA-Z]*$|^(Name|Radio|Motor|Export|AGM|Gel|LFP.*|NMC.*|BMS|Peukert|Ah \/ A|Sensor|Text|Shunt|Start|Position|Minimum|Maximum|System|Version|Pause|Material|Original|Relais?|Symbol|Format|Deutsch|English|Cellwain|Alt Enter|US Letter)$/;

describe('the German interface', () => {
  it('has words for everything the English one says', () => {
    expect(pairs.length).toBeGreaterThan(500);
    const missing = pairs.filter(({ en, de }) => en !== undefined && typeof en !== typeof de);
    expect(missing.map(({ where }) => where)).toEqual([]);
  });

  it('leaves no sentence in English', () => {
    const leaks = pairs.filter(
      ({ en, de }) => typeof en === 'string' && en === de && en.includes(' ') && !alike.test(en),
    );
    expect(leaks.map(({ where, en }) => `${where}: ${String(en)}`)).toEqual([]);
  });

  it('uses words a German reader takes for German', () => {
    const english = /\b(the|and|with|from|your|which|until|charger|pack size|wire)\b/i;
    const leaks = pairs.filter(({ de }) => typeof de === 'string' && english.test(de));
    expect(leaks.map(({ where, de }) => `${where}: ${String(de)}`)).toEqual([]);
  });

  it('says the same figures as the English one, fixed and filled in', () => {
    const said = (words: unknown, given: readonly unknown[]): string | null => {
      if (typeof words === 'string') return words;
      if (typeof words !== 'function') return null;
      try {
        const text: unknown = words(...given);
        return typeof text === 'string' ? text : null;
      } catch {
        // Words that take more than figures and names.
        return null;
      }
    };
    // Read as a count by some words and as a name by others.
    const fillings = [
      [23, 37, 41, 53, 67, 71],
      ['23', '37', '41', '53', '67', '71'],
    ];
    let compared = 0;
    // The reader of quantities words its mistakes in English itself; the German interface has its own.
    const alone = pairs.filter(({ where }) => !where.endsWith('controlTexts.mistake'));
    const apart = alone.flatMap(({ where, en, de }) =>
      fillings.flatMap((given) => {
        const [english, german] = [said(en, given), said(de, given)];
        if (english === null || german === null) return [];
        compared += 1;
        return figuresApart(english, german).map((words) => `${where}: ${words}`);
      }),
    );
    expect(compared).toBeGreaterThan(3000);
    expect([...new Set(apart)]).toEqual([]);
  });

  it('names the generic parts', () => {
    const names = [...blockParts, ...chargerParts, ...converterParts, ...accessoryParts].flatMap(
      ({ name, group }) => [name, group],
    );
    const english = /\b(charger|pack|step|light|lamp|socket|pump|with|wall|flooded|to)\b/i;
    expect(names.map((name) => nameIn(name, 'de')).filter((name) => english.test(name))).toEqual(
      [],
    );
  });

  it.each(sampleNames)('opens the sample %s with German names and the same figures', (name) => {
    const plan = samplePlan(name);
    const german = namedIn(plan, 'de');
    const words: string[] = [];
    const collect = (one: unknown, other: unknown): void => {
      if (!isObject(one) || !isObject(other)) {
        if (typeof one === 'number') expect(other).toBe(one);
        return;
      }
      for (const [key, value] of Object.entries(one)) {
        const same = key === 'name' || key === 'note' ? value : null;
        if (typeof same === 'string' && same === other[key] && same.includes(' ')) words.push(same);
        collect(value, other[key]);
      }
    };
    collect(plan, german);
    // Chemistry, volts and ampere hours read the same in both.
    expect(
      [...new Set(words)].filter((word) => !/^(AGM|LFP|NMC) [\d VA·h(),S]+(BMS\))?$/.test(word)),
    ).toEqual([]);
  });

  it('leaves names of the user as they are', () => {
    expect(nameIn('Grandpa’s wagon', 'de')).toBe('Grandpa’s wagon');
  });
});
