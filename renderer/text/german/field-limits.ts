/** German titles and helps of the limits of the findings, by the English of the schema. */
export const fieldLimits: Readonly<Record<string, string>> = {
  'Plain A·h over A, note above': 'A·h durch A verspricht zu viel, Hinweis über',
  'How much more it promises than the run gives.':
    'Wie viel mehr es verspricht, als die Fahrt gibt.',
  'Limits of the pack findings': 'Grenzen der Akkubefunde',
  'Capacity difference, note above': 'Kapazitätsunterschied, Hinweis über',
  'Capacity difference, warn above': 'Kapazitätsunterschied, Warnung über',
  'Between blocks of one string. Blocks of one batch lie within 5 %.':
    'Zwischen Blöcken eines Strangs. Blöcke einer Charge liegen innerhalb von 5 %.',
  'Age difference, warn above': 'Altersunterschied, Warnung über',
  'Joining current that does no harm': 'Ausgleichsstrom, der nicht schadet',
  'Where the block states no highest charge current. Sources disagree on how equal strings must be.':
    'Wo der Block keinen höchsten Ladestrom nennt. Wie gleich Stränge sein müssen, sehen die Quellen verschieden.',
  'Limits of the charging findings': 'Grenzen der Ladebefunde',
  'Lead: charge current, warn below': 'Blei: Ladestrom, Warnung unter',
  'Lead: charge current, warn above': 'Blei: Ladestrom, Warnung über',
  'Where the block states no highest charge current. Makers state 0.2 to 0.3.':
    'Wo der Block keinen höchsten Ladestrom nennt. Hersteller nennen 0,2 bis 0,3.',
  'Lithium: charge current, warn above': 'Lithium: Ladestrom, Warnung über',
  'Where the block states no highest charge current.':
    'Wo der Block keinen höchsten Ladestrom nennt.',
  'Lithium: no charge below': 'Lithium: kein Laden unter',
  'Makers state 0 °C, some 5 °C; lower only for cells made for it.':
    'Hersteller nennen 0 °C, manche 5 °C; tiefer nur bei Zellen, die dafür gebaut sind.',
  'Lead: may freeze below': 'Blei: kann gefrieren unter',
  'When flat; a full block stands far colder.':
    'Wenn leer; ein voller Block verträgt viel mehr Kälte.',
  'Lead: flat below, for freezing': 'Blei: leer unter, fürs Gefrieren',
  'Lead: full charge at least every': 'Blei: Vollladung mindestens alle',
  'Limits of the drive findings': 'Grenzen der Antriebsbefunde',
  'Motor over its rated voltage, warn above': 'Motor über Nennspannung, Warnung über',
  'Motor over its rated voltage, stop above': 'Motor über Nennspannung, Halt über',
  'Start ramp, warn below': 'Anfahrrampe, Warnung unter',
  'Braking on release, warn above': 'Bremsen beim Loslassen, Warnung über',
  'A third of g throws an unready rider forward.':
    'Ein Drittel g wirft einen unvorbereiteten Fahrer nach vorn.',
  'Full pack for regeneration, above': 'Akku gilt für Rückspeisung als voll über',
  'Fuse over the motors, warn above': 'Sicherung über den Motoren, Warnung über',
  'What the fuse may carry for minutes over the rated current of the motors.':
    'Was die Sicherung minutenlang tragen darf, bezogen auf den Nennstrom der Motoren.',
  'Charge port polarity right': 'Polung der Ladebuchse richtig',
  'Read with a meter at the open port, and the pins compared with the plug of the charger.':
    'Mit dem Messgerät an der offenen Buchse gemessen und die Stifte mit dem Stecker des Ladegeräts verglichen.',
};
