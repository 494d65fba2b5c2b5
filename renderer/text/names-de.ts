import type { Plan } from '#core/plan/schema/plan.ts';
import type { Language } from '#core/plan/language.ts';

/** Names and notes of the sample plans and of the generic parts, by their English words. */
const words: Readonly<Record<string, string>> = {
  'Orchard cart': 'Obstwagen',
  'A 24 V hand-guided cart hauls crates between rows of trees, with work lights and a radio on a step-down converter. Which pack lasts a picking shift? Invented data.':
    'Ein handgeführter Wagen mit 24 V fährt Kisten zwischen Baumreihen, mit Arbeitsleuchten und Radio an einem Abwärtswandler. Welcher Akku hält eine Pflückschicht durch? Erfundene Daten.',
  'One geared motor on the rear axle, thumb lever on the handlebar, walking speed.':
    'Ein Getriebemotor an der Hinterachse, Daumenhebel am Lenker, Schrittgeschwindigkeit.',
  'Work light, front': 'Arbeitsleuchte vorn',
  'Work light, rear': 'Arbeitsleuchte hinten',
  Radio: 'Radio',
  'Picking shift': 'Pflückschicht',
  'Start, loaded': 'Anfahren, beladen',
  'Haul crates down the row': 'Kisten die Reihe hinab fahren',
  'Stand and unload': 'Stehen und abladen',
  'Start, empty': 'Anfahren, leer',
  'Return empty': 'Leer zurück',
  'Stand and load': 'Stehen und aufladen',
  'Cold morning': 'Kalter Morgen',
  'Two 12 V 18 A·h AGM in series': 'Zwei AGM 12 V 18 A·h in Reihe',
  'What the cart was built with.': 'Womit der Wagen gebaut wurde.',
  'One 24 V 20 A·h LFP with BMS': 'Ein LFP 24 V 20 A·h mit BMS',
  'A sealed pack in the place of the two blocks.': 'Ein geschlossener Akku statt der zwei Blöcke.',
  'Two strings of two 12 V 12 A·h AGM': 'Zwei Stränge aus zwei AGM 12 V 12 A·h',
  'Four smaller blocks that fit beside each other.':
    'Vier kleinere Blöcke, die nebeneinander passen.',
  Night: 'Nacht',
  Blocks: 'Blöcke',
  'Pack terminals': 'Akkuklemmen',
  'Main bus': 'Hauptschiene',
  'Motor controller': 'Motorsteuerung',
  'Geared motor': 'Getriebemotor',
  'Step-down 24 to 12 V': 'Abwärtswandler 24 auf 12 V',
  'Charge port': 'Ladebuchse',
  'Block links': 'Blockverbinder',
  'Main line': 'Hauptleitung',
  'Pack connector': 'Akkustecker',
  'Lug at pack plus': 'Kabelschuh an Akku plus',
  'Controller supply': 'Zuleitung Steuerung',
  'Motor line': 'Motorleitung',
  'Converter supply': 'Zuleitung Wandler',
  'Front light line': 'Leitung Licht vorn',
  'Rear light line': 'Leitung Licht hinten',
  'Radio line': 'Leitung Radio',
  'Charge line': 'Ladeleitung',
  'Campsite tug': 'Campingschlepper',
  'A seated tug with two brushed motors pulls luggage trailers up sloping lanes: 24 V lead against 36 V lithium. Invented data.':
    'Ein Sitzschlepper mit zwei Bürstenmotoren zieht Gepäckanhänger ansteigende Wege hinauf: 24 V Blei gegen 36 V Lithium. Erfundene Daten.',
  'Two brushed motors: in series for slow, in parallel for fast. Rheostatic brake, mechanical parking brake.':
    'Zwei Bürstenmotoren: in Reihe langsam, parallel schnell. Widerstandsbremse, mechanische Feststellbremse.',
  'Tail lights': 'Rücklichter',
  Beacon: 'Rundumleuchte',
  Headlight: 'Scheinwerfer',
  Horn: 'Hupe',
  'Position tracker': 'Ortungsgerät',
  'Slow, motors in series': 'Langsam, Motoren in Reihe',
  'Fast, motors in parallel': 'Schnell, Motoren parallel',
  'Luggage rounds': 'Gepäckrunden',
  'Lane with trailer, level': 'Weg mit Anhänger, eben',
  'Up the slope, 7 %': 'Die Steigung hinauf, 7 %',
  Unload: 'Abladen',
  'Back down, empty': 'Leer hinunter',
  'Lane back, empty': 'Weg zurück, leer',
  'Wait at the gate': 'Warten am Tor',
  '24 V lead: two 12 V 40 A·h AGM': '24 V Blei: zwei AGM 12 V 40 A·h',
  'Heavy, cheap, matches the controller that is there.':
    'Schwer, billig, passt zur vorhandenen Steuerung.',
  '36 V lithium: NMC 30 A·h with BMS': '36 V Lithium: NMC 30 A·h mit BMS',
  'Needs a controller for 36 V; the motors see half as much voltage again.':
    'Braucht eine Steuerung für 36 V; die Motoren bekommen die anderthalbfache Spannung.',
  'Two motors': 'Zwei Motoren',
  'Brake resistor': 'Bremswiderstand',
  'Step-down to 12 V': 'Abwärtswandler auf 12 V',
  'Brake line': 'Bremsleitung',
  'Tail light line': 'Leitung Rücklichter',
  'Beacon line': 'Leitung Rundumleuchte',
  'Headlight line': 'Leitung Scheinwerfer',
  'Horn line': 'Leitung Hupe',
  'Tracker line': 'Leitung Ortungsgerät',
  'Market scooter': 'Marktroller',
  'A seated scooter in daily use, charged overnight. Its three-year-old pair of blocks holds less than it did, and one block is 27 % weaker than the other. Invented data.':
    'Ein Sitzroller im täglichen Einsatz, über Nacht geladen. Sein drei Jahre altes Blockpaar hält weniger als früher, und ein Block ist 27 % schwächer als der andere. Erfundene Daten.',
  'One motor with gearbox, electromagnetic parking brake, basket in front.':
    'Ein Motor mit Getriebe, elektromagnetische Feststellbremse, Korb vorn.',
  'Front and tail lights': 'Vorder- und Rücklicht',
  'Battery gauge': 'Ladeanzeige',
  'Market day': 'Markttag',
  Start: 'Anfahren',
  Pavement: 'Gehweg',
  'Wait at the crossing': 'Warten am Übergang',
  'Slight rise, 4 %': 'Leichte Steigung, 4 %',
  'Stand at a stall': 'Halt am Stand',
  'The pair as it is, one block weak': 'Das Paar, wie es ist, ein Block schwach',
  'Meter readings after a night of rest: 12.83 V and 12.58 V.':
    'Messwerte nach einer Nacht Ruhe: 12,83 V und 12,58 V.',
  'A new pair of the same': 'Ein neues Paar vom selben Typ',
  '24 V LFP with the old charger': '24 V LFP mit dem alten Ladegerät',
  'Can the lead charger stay?': 'Kann das Blei-Ladegerät bleiben?',
  'Scooter controller': 'Rollersteuerung',
  Motor: 'Motor',
  'Lug between the blocks': 'Kabelschuh zwischen den Blöcken',
  'Seat connector': 'Sitzstecker',
  'Light line': 'Lichtleitung',
  'Gauge line': 'Leitung Ladeanzeige',
  Light: 'Licht',
  'LED tail light pair': 'LED-Rücklichtpaar',
  'LED beacon': 'LED-Rundumleuchte',
  Sound: 'Ton',
  'Radio, moderate': 'Radio, mittellaut',
  'Sound module with engine noise': 'Geräuschmodul mit Motorklang',
  Comfort: 'Komfort',
  'Phone socket, charging': 'Telefondose, ladend',
  'Seat heater': 'Sitzheizung',
  Fan: 'Lüfter',
  Instruments: 'Anzeigen',
  'Digital voltmeter': 'Digitalvoltmeter',
  'Radio remote receiver': 'Funkempfänger',
  Tools: 'Werkzeuge',
  'Small water pump': 'Kleine Wasserpumpe',
  'Tipping actuator': 'Kippantrieb',
  'Wall supplies': 'Steckernetzteile',
};

/** Names that are made of a kind and its figures. */
const patterns: readonly (readonly [RegExp, string])[] = [
  [/^Motor controller (?=\d)/, 'Motorsteuerung '],
  [/^Scooter controller (?=\d)/, 'Rollersteuerung '],
  [/^Brushed motor (?=\d)/, 'Bürstenmotor '],
  [/^Step-down ([\d-]+) V to (\d+) V/, 'Abwärtswandler $1 V auf $2 V'],
  [/^([\d-]+) V to (\d+) V$/, '$1 V auf $2 V'],
  [/^Unregulated wall supply /, 'Ungeregeltes Steckernetzteil '],
  [/^Lead, temperature compensated charger /, 'Blei-Ladegerät, temperaturgeführt, '],
  [/^Lead with equalising pulses charger /, 'Blei-Ladegerät mit Ausgleichsimpulsen '],
  [/^Lead charger /, 'Blei-Ladegerät '],
  [/^(Gel|LFP|NMC) charger /, '$1-Ladegerät '],
  [/^Lead, temperature compensated, /, 'Blei, temperaturgeführt, '],
  [/^Lead with equalising pulses, /, 'Blei mit Ausgleichsimpulsen, '],
  [/^Lead, /, 'Blei, '],
  [/^Flooded/, 'Blei, flüssig'],
  [/^(LFP|NMC) pack, /, '$1-Akku, '],
  [/^(LFP|NMC) cell groups$/, '$1-Zellgruppen'],
  [/^(LFP|NMC) cell group /, '$1-Zellgruppe '],
  [/^LED work light /, 'LED-Arbeitsleuchte '],
  [/^LED strip /, 'LED-Streifen '],
  [/^Filament lamp /, 'Glühlampe '],
  [/^Halogen headlamp /, 'Halogenscheinwerfer '],
  [/^Sound amplifier (.*), music$/, 'Verstärker $1, Musik'],
];

/** Name of a generic part or of something in a sample plan. Names of one's own stay as they are. */
export function nameIn(name: string, language: Language): string {
  if (language === 'en') return name;
  const known = words[name];
  if (known !== undefined) return known;
  const pattern = patterns.find(([from]) => from.test(name));
  return pattern === undefined ? name : name.replace(pattern[0], pattern[1]);
}

/** A copy of something whose names and notes, at any depth, are in a language. */
export function namedIn<T>(value: T, language: Language): T {
  if (language === 'en' || typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((entry) => namedIn<unknown>(entry, language)) as T;
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]: [string, unknown]) => [
      key,
      typeof entry === 'string' && (key === 'name' || key === 'note')
        ? nameIn(entry, language)
        : namedIn(entry, language),
    ]),
  ) as T;
}

/** A sample plan as it opens for a person of that language. */
export const sampleIn = (plan: Plan, language: Language): Plan => namedIn(plan, language);
