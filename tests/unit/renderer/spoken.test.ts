import { expect, it } from 'vitest';
import { commandLabel, menuLabel } from '#renderer/text/commands.ts';
import { menuTexts } from '#renderer/text/menu.ts';
import { nameIn } from '#renderer/text/names.ts';
import { learn } from '#renderer/text/spoken.ts';

const said = (): string[] => [
  menuTexts.de.language,
  commandLabel('plan.new', 'de'),
  menuLabel('file', 'de'),
  nameIn('Orchard cart', 'de'),
];

it('speaks English until the German words are there, and German from then on', async () => {
  const english = said();
  expect(english).toEqual(['Language', 'New plan', 'File', 'Orchard cart']);
  await learn('de');
  expect(said()).toEqual(['Sprache', 'Neuer Plan', 'Datei', 'Obstwagen']);
  expect(menuTexts.en.language).toBe('Language');
});
