import type { ChargeEnd } from '#core/charge/charge-result.ts';
import type { ChargerOrigin } from '#core/charge/charger-table.ts';
import type { ChargeWay } from '#core/charge/charge-ways.ts';
import type { Routine, Weekday } from '#core/plan/schema/week.ts';
import type { ProposalReason, WeekObstacle } from '#core/week/index.ts';
import { texts } from './spoken.ts';

export type ChargeQuantity = 'voltage' | 'current' | 'percent' | 'cells';

export interface ChargingTexts {
  readonly option: string;
  readonly days: Readonly<Record<Weekday, string>>;
  readonly daysLong: Readonly<Record<Weekday, string>>;
  readonly match: {
    readonly title: string;
    readonly lead: string;
    readonly charger: string;
    readonly origin: string;
    readonly origins: Readonly<Record<ChargerOrigin, string>>;
    readonly verdict: string;
    readonly verdicts: Readonly<Record<'fits' | 'limits' | 'misfits' | 'unknown', string>>;
    readonly reason: string;
    readonly hours: string;
    readonly use: string;
    readonly used: (charger: string) => string;
    readonly inUse: string;
    readonly limited: (count: number) => string;
    readonly misfits: (count: number) => string;
    readonly keepOld: (verdict: string, reason: string) => string;
    readonly none: string;
  };
  readonly curve: {
    readonly title: string;
    readonly lead: (percent: string) => string;
    readonly quantities: Readonly<Record<ChargeQuantity, string>>;
    readonly units: Readonly<Record<ChargeQuantity, string>>;
    readonly time: string;
    readonly to80: string;
    readonly to98: string;
    readonly done: string;
    readonly doneNote: (percent: string) => string;
    readonly never: string;
    readonly intoPack: string;
    readonly mains: string;
    readonly cost: string;
    readonly efficiency: (percent: string) => string;
    readonly highest: string;
    readonly ends: Readonly<Record<ChargeEnd, string>>;
    readonly stages: { readonly absorption: string; readonly end: string; readonly float: string };
    readonly highestCell: string;
    readonly lowestCell: string;
    readonly summary: (option: string, hours: string, percent: string, how: string) => string;
    readonly howTo: string;
    readonly waysTitle: string;
    readonly way: string;
    readonly ways: Readonly<Record<ChargeWay, string>>;
    readonly chargers: string;
    readonly hours: string;
    readonly weakest: string;
    readonly highestBlock: string;
    readonly gassed: string;
    readonly table: string;
    readonly chart: string;
  };
  readonly week: {
    readonly title: string;
    readonly lead: string;
    readonly start: string;
    readonly startLead: string;
    readonly empty: string;
    readonly strip: (name: string) => string;
    readonly howTo: string;
    readonly use: string;
    readonly window: string;
    readonly charging: string;
    readonly tooLong: string;
    readonly addUse: string;
    readonly addWindow: string;
    readonly newWindow: string;
    readonly remove: (name: string) => string;
    readonly removed: (name: string) => string;
    readonly bringBack: string;
    readonly moved: (name: string) => string;
    readonly begins: string;
    readonly from: string;
    readonly until: string;
    readonly onDays: string;
    readonly usual: string;
    readonly outing: string;
    readonly useHead: string;
    readonly windowHead: string;
    readonly aboutUse: (name: string, day: string, from: string, minutes: string) => string;
    readonly daily: string;
    readonly timeWrong: string;
  };
  readonly routine: {
    readonly title: string;
    readonly lead: (weeks: number) => string;
    readonly triggers: Readonly<Record<Routine['trigger'], string>>;
    readonly plugIn: string;
    readonly lost: string;
    readonly lostOf: (lost: number, all: number) => string;
    readonly lowest: string;
    readonly depth: string;
    readonly cycles: string;
    readonly seasons: string;
    readonly withoutFull: string;
    readonly unattended: string;
    readonly energy: string;
    readonly cost: string;
    readonly proposed: string;
    readonly chosen: string;
    readonly take: string;
    readonly taken: string;
    readonly because: string;
    readonly reasons: Readonly<Record<ProposalReason, string>>;
    readonly obstacles: Readonly<Record<WeekObstacle, string>>;
    readonly failTitle: string;
    readonly failNone: string;
    readonly fail: (
      outing: string,
      day: string,
      time: string,
      failed: number,
      wanted: number,
      shortest: string,
      minutes: string,
    ) => string;
    readonly stepsTitle: string;
    readonly step: (
      days: string,
      time: string,
      hours: string,
      from: string,
      to: string,
      pack: number,
    ) => string;
    readonly noSteps: string;
    readonly storageTitle: string;
    readonly storage: (days: number, start: string, end: string, topUps: number) => string;
    readonly storageLow: (day: number) => string;
    readonly freeze: string;
    readonly cold: (hours: string) => string;
    readonly calendar: string;
    readonly firstDay: string;
    readonly ownDays: string;
  };
  readonly season: {
    readonly title: string;
    readonly lead: string;
    readonly axis: string;
    readonly lowest: string;
    readonly summary: (lost: number, all: number, lowest: string) => string;
    readonly weekNumber: string;
    readonly seasonAxis: string;
    readonly weekUnit: string;
    readonly failed: string;
    readonly temperature: string;
  };
  readonly conditions: {
    readonly title: string;
    readonly lead: string;
    readonly places: Readonly<
      Record<'open-air' | 'ventilated-room' | 'closed-room' | 'sleeping-room', string>
    >;
    readonly cheap: string;
    readonly hasCheap: string;
    readonly asOutdoors: string;
    readonly full: string;
  };
  readonly card: {
    readonly title: string;
    readonly lead: string;
    readonly todo: string;
    readonly care: string;
  };
  readonly waiting: string;
  readonly failed: string;
}

export const chargingTexts = texts('charging', {
  option: 'Option',
  days: { mon: 'Mon', tue: 'Tue', wed: 'Wed', thu: 'Thu', fri: 'Fri', sat: 'Sat', sun: 'Sun' },
  daysLong: {
    mon: 'Monday',
    tue: 'Tuesday',
    wed: 'Wednesday',
    thu: 'Thursday',
    fri: 'Friday',
    sat: 'Saturday',
    sun: 'Sunday',
  },
  match: {
    title: 'Which charger fits?',
    lead: 'Chemistry, cells, end voltage, current and port, each judged by itself. The same volts alone are no match.',
    charger: 'Charger',
    origin: 'From',
    origins: {
      own: 'this option',
      'other-option': 'another option',
      'own-part': 'own part',
      library: 'library',
    },
    verdict: 'Verdict',
    verdicts: {
      fits: 'Fits',
      limits: 'Fits with limits',
      misfits: 'Does not fit',
      unknown: 'Not known',
    },
    reason: 'What decides',
    hours: 'After the outing',
    use: 'Use',
    used: (charger) => `Charger: ${charger}`,
    inUse: 'in use',
    limited: (count) => `${count} chargers that fit with limits`,
    misfits: (count) => `${count} chargers that do not fit`,
    keepOld: (verdict, reason) => `May the charger of another option stay? ${verdict}: ${reason}`,
    none: 'No charger chosen yet. Take one from the list.',
  },
  curve: {
    title: 'The charge after the outing',
    lead: (percent) =>
      `From the state the outing leaves, ${percent}, to where the charger ends, and two hours on.`,
    quantities: {
      voltage: 'Voltage',
      current: 'Current',
      percent: 'Charge',
      cells: 'Cell groups',
    },
    units: { voltage: 'V', current: 'A', percent: '%', cells: 'V per cell' },
    time: 'Time',
    to80: '80 % after',
    to98: '98 % after',
    done: 'Charger done after',
    doneNote: (percent) => `the pack then holds ${percent}`,
    never: 'never',
    intoPack: 'Into the pack',
    mains: 'From the mains',
    cost: 'Cost',
    efficiency: (percent) => `${percent} of the charge stays`,
    highest: 'Highest voltage',
    ends: {
      'tail-current': 'by its tail current',
      timer: 'by its timer',
      'bms-group-high': 'a cell group is full, the BMS opens',
      'bms-over-current': 'too much current, the BMS opens',
      target: 'at the charge wanted',
      unplugged: 'never by itself',
      'no-current': 'no current flows',
    },
    stages: { absorption: 'voltage held', end: 'done', float: 'float' },
    highestCell: 'highest',
    lowestCell: 'lowest',
    summary: (option, hours, percent, how) =>
      `${option}: the charger ends after ${hours}, ${how}, at ${percent}.`,
    howTo: 'Arrow keys read the lines, plus and minus zoom, zero shows all.',
    waysTitle: 'Whole or block by block',
    way: 'Way',
    ways: {
      whole: 'One charger across the pack',
      'one-after-another': 'Block after block, one block charger',
      'isolated-each': 'All blocks at once, isolated chargers',
    },
    chargers: 'Chargers',
    hours: 'Time',
    weakest: 'Emptiest block ends at',
    highestBlock: 'Highest block voltage',
    gassed: 'Overcharge of one block',
    table: 'Show as table',
    chart: 'Show as chart',
  },
  week: {
    title: 'The week',
    lead: 'When the machine is used and when it can be charged. Drag an outing, or focus it and use the arrow keys.',
    start: 'Start the week',
    startLead:
      'State when the machine is used and when someone can plug it in. Then Cellwain simulates a season, compares routines and writes your calendar.',
    empty: 'No week yet',
    strip: (name) => `A typical week of ${name}`,
    howTo:
      'Left and right move by a quarter of an hour, up and down change the length, Delete takes the outing out.',
    use: 'outing',
    window: 'charger can be plugged in',
    charging: 'charging',
    tooLong: 'ends early',
    addUse: 'Add outing',
    addWindow: 'Add charging window',
    newWindow: 'Evening',
    remove: (name) => `Remove ${name}`,
    removed: (name) => `${name} removed`,
    bringBack: 'Bring back',
    moved: (name) => `Move ${name}`,
    begins: 'Begins',
    from: 'From',
    until: 'Until',
    onDays: 'Days',
    usual: 'goal of the outing',
    outing: 'Outing',
    useHead: 'Outings of the week',
    windowHead: 'Charging windows',
    aboutUse: (name, day, from, minutes) => `${name}, ${day} ${from}, ${minutes}`,
    daily: 'every day',
    timeWrong: 'Write a time such as 8:30 or 20:15.',
  },
  routine: {
    title: 'The routine',
    lead: (weeks) =>
      `Each way of plugging in, simulated over ${weeks} weeks with the weather of the year.`,
    triggers: {
      'after-use': 'After every use',
      nightly: 'Every night',
      weekend: 'Weekends only',
      own: 'Own days',
    },
    plugIn: 'Plug in',
    lost: 'Outings cut short',
    lostOf: (lost, all) => `${lost} of ${all}`,
    lowest: 'Lowest charge',
    depth: 'Mean depth',
    cycles: 'Full cycles',
    seasons: 'Seasons',
    withoutFull: 'Days without full',
    unattended: 'Unattended',
    energy: 'Mains',
    cost: 'Cost',
    proposed: 'proposed',
    chosen: 'chosen',
    take: 'Choose',
    taken: 'Charging routine',
    because: 'Proposed because',
    reasons: {
      'all-outings': 'every outing can be driven',
      'fewest-failures': 'it loses the fewest outings',
      'lead-full-soonest': 'lead is full again soonest',
      'least-unattended': 'lithium charges unattended for the shortest time',
      'longest-life': 'the pack lasts longest',
      cheapest: 'it costs least',
      'all-alike': 'all routines do alike',
      'below-minimum': 'but some outings end below the lowest charge you want',
    },
    obstacles: {
      'no-charger': 'This option has no charger. Choose one above.',
      'no-use': 'No outing stands in the week. Add one.',
      'no-window': 'No charging window stands in the week. Add one.',
      'charger-cannot-charge':
        'This charger cannot push current into this pack. Choose another above.',
    },
    failTitle: 'Would fail',
    failNone: 'With the proposed routine every outing can be driven.',
    fail: (outing, day, time, failed, wanted, shortest, minutes) =>
      `${outing}, ${day} ${time}: ${failed} of ${wanted} times too short, once ${shortest} of ${minutes}.`,
    stepsTitle: 'What to do',
    step: (days, time, hours, from, to, pack) =>
      `${days} at ${time}: plug in${pack > 1 ? ` pack ${pack}` : ''}, about ${hours}, from ${from} to ${to}.`,
    noSteps: 'Nothing to plug in.',
    storageTitle: 'Storage',
    storage: (days, start, end, topUps) =>
      `${days} days a year: store at ${start}, isolator open; left alone it would end at ${end}. ${topUps === 0 ? 'No top-up needed.' : topUps === 1 ? 'Top up once.' : `Top up ${topUps} times.`}`,
    storageLow: (day) => `It passes the limit of storage on day ${day}.`,
    freeze: 'So flat and so cold, the acid can freeze.',
    cold: (hours) =>
      `For ${hours} a window stood open but the pack was below 0 °C: lithium must not be charged then.`,
    calendar: 'Save as calendar…',
    firstDay: 'First week',
    ownDays: 'Own days',
  },
  season: {
    title: 'The season',
    lead: 'Lowest charge of each week under each routine. Where a line touches the dashed level, outings are at risk.',
    axis: 'Lowest charge',
    lowest: 'lowest wanted',
    summary: (lost, all, lowest) =>
      `With the proposed routine ${lost} of ${all} outings are cut short; the lowest charge is ${lowest}.`,
    weekNumber: 'Week',
    seasonAxis: 'Season',
    weekUnit: 'week',
    failed: 'cut short',
    temperature: 'Temperature',
  },
  conditions: {
    title: 'Place, season, tariff',
    lead: 'Where it is charged and stored, and what the energy costs.',
    places: {
      'open-air': 'Outdoors or under a roof',
      'ventilated-room': 'Aired garage or shed',
      'closed-room': 'Closed room',
      'sleeping-room': 'Where people sleep',
    },
    cheap: 'Night tariff',
    hasCheap: 'There is a night tariff',
    asOutdoors: 'as outdoors',
    full: 'full',
  },
  card: {
    title: 'Charge card',
    lead: 'For the wall beside the charger; the place Sheet prints it.',
    todo: 'What to do',
    care: 'Care',
  },
  waiting: 'Charging is being simulated…',
  failed: 'Charging could not be simulated:',
});
