import type { Subject } from '#core/bench/readings/judge-readings.ts';
import type { Cause } from '#core/bench/readings/explain-gap.ts';
import type { HealthAdvice } from '#core/bench/readings/health.ts';
import type { ReadingKind } from '#core/plan/schema/reading.ts';
import { texts } from './spoken.ts';

interface KindWords {
  readonly name: string;
  /** What the reading can tell, and how to take it. */
  readonly tells: string;
}

export interface BenchTexts {
  readonly option: string;
  readonly logs: {
    readonly title: string;
    readonly lead: string;
    readonly add: string;
    readonly drop: string;
    readonly columns: string;
    readonly columnsLead: string;
    readonly preview: string;
    readonly roles: Readonly<
      Record<
        | 'time'
        | 'format'
        | 'current'
        | 'sense'
        | 'voltage'
        | 'units'
        | 'temperature'
        | 'speed'
        | 'run',
        string
      >
    >;
    readonly senses: Readonly<Record<'auto' | 'discharge-positive' | 'charge-positive', string>>;
    readonly none: string;
    readonly read: string;
    readonly reading: (percent: string) => string;
    readonly stop: string;
    readonly change: string;
    readonly remove: (name: string) => string;
    readonly removeShort: string;
    readonly rows: (kept: string, read: string) => string;
    readonly reasons: Readonly<Record<string, string>>;
    readonly run: string;
    readonly take: (run: string) => string;
    readonly minutes: string;
    readonly charge: string;
    readonly current: string;
    readonly lowest: string;
    readonly remarks: string;
    readonly sorted: (count: number) => string;
    readonly gaps: (count: number, longest: string) => string;
    readonly turned: string;
  };
  readonly fit: {
    readonly title: string;
    readonly lead: string;
    readonly start: string;
    readonly working: (percent: string) => string;
    readonly cancel: string;
    readonly temperature: string;
    readonly temperatureHelp: string;
    readonly fromOuting: string;
    readonly startHelp: string;
    readonly fromVolts: string;
    readonly shown: string;
    readonly ofFit: string;
    readonly ofTest: string;
    readonly nothingChosen: string;
    readonly value: string;
    readonly fitted: string;
    readonly limits: string;
    readonly told: string;
    readonly yes: string;
    readonly usual: string;
    readonly values: Readonly<Record<string, string>>;
    readonly unitsTitle: Readonly<Record<'block' | 'group', string>>;
    readonly capacity: string;
    readonly resistance: string;
    readonly startCharge: string;
    readonly misfit: string;
    readonly capacityLeft: string;
    readonly againstLabel: string;
    readonly againstNew: string;
    readonly voltsTitle: string;
    readonly residualTitle: string;
    readonly voltage: string;
    readonly difference: string;
    readonly time: string;
    readonly measured: (run: string) => string;
    readonly model: (run: string) => string;
    readonly summary: (runs: number, misfit: string) => string;
    readonly howTo: string;
    readonly testTitle: string;
    readonly testLead: string;
    readonly testNeeds: string;
    readonly to: string;
    readonly measuredMin: string;
    readonly predictedMin: string;
    readonly off: string;
    readonly rms: string;
    readonly remarks: string;
    readonly apply: string;
    readonly applyLead: (option: string) => string;
    readonly applied: string;
    readonly undo: string;
    readonly discard: string;
    readonly inPlan: (source: string) => string;
    readonly takeOut: string;
    readonly takenOut: string;
  };
  readonly road: {
    readonly title: string;
    readonly lead: string;
    readonly surface: string;
    readonly rolling: string;
    readonly drag: string;
    readonly now: string;
    readonly summary: (count: number, read: string, model: string) => string;
    readonly dragUntold: (speed: string) => string;
    readonly outliers: (count: number) => string;
    readonly reasons: Readonly<
      Record<'not-computable' | 'too-little-current' | 'out-of-range', string>
    >;
    readonly apply: string;
    readonly applied: string;
    readonly inPlan: (source: string) => string;
    readonly source: (readings: number, logs: string, date: string) => string;
  };
  readonly readings: {
    readonly title: string;
    readonly lead: string;
    readonly add: string;
    readonly empty: string;
    readonly emptyLead: string;
    readonly kinds: Readonly<Record<ReadingKind, KindWords>>;
    readonly date: string;
    readonly usualError: (percent: string) => string;
    readonly remove: string;
    readonly place: (string: number, position: number) => string;
    readonly wholePack: string;
    readonly care: string;
  };
  readonly verdict: {
    readonly title: string;
    readonly lead: string;
    readonly subject: string;
    readonly subjects: Readonly<Record<Subject, string>>;
    readonly measured: string;
    readonly planned: string;
    readonly band: string;
    readonly state: string;
    readonly states: Readonly<Record<'agrees' | 'better' | 'worse' | 'open', string>>;
    readonly gap: (planned: string, measured: string) => string;
    readonly noCause: string;
    readonly causes: Readonly<Record<Cause['kind'], string>>;
    readonly explains: (percent: string, minutes: string) => string;
  };
  readonly health: {
    readonly title: string;
    readonly lead: string;
    readonly block: string;
    readonly date: string;
    readonly capacity: string;
    readonly resistance: string;
    readonly trend: string;
    readonly advice: string;
    readonly advices: Readonly<Record<HealthAdvice, string>>;
    readonly perYear: (percent: string) => string;
    readonly source: string;
    readonly chart: string;
    readonly figureOf: string;
    readonly year: string;
    readonly summary: (blocks: number) => string;
  };
}

export const benchTexts = texts('bench', {
  option: 'Option measured',
  logs: {
    title: 'Logs',
    lead: 'A discharge, best from full, logged as text (CSV): volts, amperes, time. Any layout; one file may hold several runs.',
    add: 'Add log',
    drop: 'or drop files here',
    columns: 'Columns',
    columnsLead: 'Guessed from the file. Check them against the first rows, then read.',
    preview: 'First rows of the file',
    roles: {
      time: 'Time',
      format: 'Time is written as',
      current: 'Current',
      sense: 'Sign of the current',
      voltage: 'Volts of the pack',
      units: 'Volts of single blocks or groups',
      temperature: 'Block temperature',
      speed: 'Speed',
      run: 'Run',
    },
    senses: {
      auto: 'as the volts tell',
      'discharge-positive': 'positive while discharging',
      'charge-positive': 'positive while charging',
    },
    none: 'none',
    read: 'Read log',
    reading: (percent) => `Reading, ${percent}`,
    stop: 'Stop',
    change: 'Change columns',
    remove: (name) => `Remove ${name}`,
    removeShort: 'Remove',
    rows: (kept, read) => `${kept} of ${read} rows used`,
    reasons: {
      'blank line': 'blank',
      comment: 'remarks',
      'too few columns': 'too few columns',
      'no time': 'without time',
      'no current': 'without current',
      'no volts': 'without volts',
      'repeated row': 'repeated',
      'repeated header': 'repeated header',
      'too many runs': 'in too many runs',
    },
    run: 'Run',
    take: (run) => `Fit ${run}`,
    minutes: 'Discharge',
    charge: 'Taken out',
    current: 'Mean current',
    lowest: 'Lowest volts',
    remarks: 'Noted',
    sorted: (count) => `${count} rows sorted in`,
    gaps: (count, longest) => `${count} ${count === 1 ? 'gap' : 'gaps'}, longest ${longest}`,
    turned: 'sign turned',
  },
  fit: {
    title: 'Fit',
    lead: 'All chosen runs are fitted together: resistance, then charge, rate loss, open-circuit curve and warming. What the data do not tell keeps its usual value.',
    start: 'Fit chosen runs',
    working: (percent) => `Fitting, ${percent}`,
    cancel: 'Cancel',
    temperature: 'Block temperature at the start',
    temperatureHelp: 'Used only where the log holds none.',
    fromOuting: 'as in the outing',
    startHelp:
      'Empty: taken as full unless the first volts speak against it; then found with the fit.',
    fromVolts: 'by the first volts',
    shown: 'Shown runs',
    ofFit: 'Fitted',
    ofTest: 'Predicted from the others',
    nothingChosen: 'Read a log and choose at least one run.',
    value: 'Value',
    fitted: 'Fitted',
    limits: '95 % limits',
    told: 'Told by the data',
    yes: 'yes',
    usual: 'no, usual value',
    values: {
      'ohmic resistance': 'Ohmic resistance',
      'polarisation against ohmic resistance': 'Polarisation against ohmic resistance',
      'polarisation time': 'Polarisation time',
      'charge when full': 'Charge when full',
      'share of the available well': 'Share of the available well',
      'levelling rate of the wells': 'Levelling rate of the wells',
      'knee resistance': 'Knee resistance',
      'resistance rise in the cold': 'Resistance rise in the cold',
    },
    unitsTitle: { block: 'Blocks against their mean', group: 'Cell groups against their mean' },
    capacity: 'Capacity',
    resistance: 'Resistance',
    startCharge: 'Charge at the start',
    misfit: 'Model against log',
    capacityLeft: 'Capacity',
    againstLabel: 'of the rated one, at its rate',
    againstNew: 'of a new block',
    voltsTitle: 'Volts, logged and fitted',
    residualTitle: 'Model minus log',
    voltage: 'Voltage',
    difference: 'Difference',
    time: 'Time',
    measured: (run) => `${run}, logged`,
    model: (run) => `${run}, model`,
    summary: (runs, misfit) =>
      `${runs} ${runs === 1 ? 'run' : 'runs'}; the model stays ${misfit} from the log on average.`,
    howTo: 'Arrow keys move the read-out line, plus and minus zoom, zero shows everything.',
    testTitle: 'Each run predicted from the others',
    testLead:
      'The run is left out, the rest are fitted, and the run left out is predicted from full.',
    testNeeds: 'With two runs or more, each is predicted from the others here.',
    to: 'To',
    measuredMin: 'Measured',
    predictedMin: 'Predicted',
    off: 'Off',
    rms: 'Volts, rms',
    remarks: 'What to keep in mind',
    apply: 'Take into the plan',
    applyLead: (option) =>
      `Replaces the label's figures of "${option}" in every simulation. One step, can be undone.`,
    applied: 'Fitted values taken into the plan',
    undo: 'Undo',
    discard: 'Put away',
    inPlan: (source) => `In the plan now: ${source}.`,
    takeOut: 'Go back to the label',
    takenOut: 'Fitted values taken out of the plan',
  },
  road: {
    title: 'Road resistance',
    lead: 'From speeds over a distance with the pack current beside them, and from logs with a column of speed: level ground, accessories off.',
    surface: 'Surface of the logged drive',
    rolling: 'Rolling resistance against the table',
    drag: 'Drag area',
    now: 'In the plan',
    summary: (count, read, model) =>
      `${count} ${count === 1 ? 'stretch' : 'stretches'}; on average ${read} read where the plan expects ${model}.`,
    dragUntold: (speed) =>
      `Air and rolling could not be told apart up to ${speed}: the drag area stays as assumed. Add a reading at a clearly higher speed.`,
    outliers: (count) =>
      `${count} ${count === 1 ? 'stretch stands' : 'stretches stand'} out and did not count.`,
    reasons: {
      'not-computable':
        'The drive is not known well enough: fill in motor and gears of the machine.',
      'too-little-current':
        'The current is less than the motor takes idling. Check the reading, and the idle current of the motor.',
      'out-of-range':
        'No road resistance from 10 to 1000 % of the table explains the currents. Check surface, grade, gear ratio and masses.',
    },
    apply: 'Take the road into the plan',
    applied: 'Road resistance taken into the plan',
    inPlan: (source) => `Now in the plan: ${source}.`,
    source: (readings, logs, date) =>
      `fitted from ${[readings === 0 ? '' : `${readings} ${readings === 1 ? 'reading' : 'readings'}`, logs].filter((part) => part !== '').join(', ')} on ${date}`,
  },
  readings: {
    title: 'Readings',
    lead: 'What a multimeter, a clamp meter, a watt-meter, a stopwatch or a tape says about the machine as built.',
    add: 'Add reading',
    empty: 'No readings yet',
    emptyLead:
      'Start with the resting volts of each block and the minutes until the cutoff: they tell most.',
    kinds: {
      'rest-voltage': {
        name: 'Resting volts',
        tells:
          'State of charge of lead, and which block differs. At least 4 hours after charge or use.',
      },
      'loaded-voltage': {
        name: 'Volts under load',
        tells:
          'Resistance of a block or of the pack: read volts and amps at the same moment, and just before.',
      },
      'joint-drop': {
        name: 'Drop across a joint',
        tells: 'A bad lug, switch or fuse holder: probes on both sides while current flows.',
      },
      'time-to-cutoff': {
        name: 'Time to cutoff',
        tells: 'Whether the whole plan holds: drive the outing from full until it stops.',
      },
      'watt-meter': {
        name: 'Watt-meter',
        tells: 'Charge and energy delivered, peak and mean current.',
      },
      speed: {
        name: 'Speed',
        tells:
          'Gearing and motor: time over a measured distance at full speed. With the pack current beside it, at any even speed: the road resistance.',
      },
      charge: {
        name: 'Charge',
        tells: 'Hours until the charger shows full, and the charge it gave.',
      },
      'standby-current': {
        name: 'Standby current',
        tells: 'What drains the pack while the machine is off.',
      },
      'stop-distance': { name: 'Stopping distance', tells: 'Deceleration of the brake.' },
      'case-temperature': {
        name: 'Case temperature',
        tells: 'Warming of motor, controller, block or connector over the air.',
      },
    },
    usualError: (percent) => `Usual error ± ${percent}.`,
    date: 'Date',
    remove: 'Remove reading',
    place: (string, position) =>
      string === 1 ? `block ${position}` : `string ${string}, block ${position}`,
    wholePack: 'whole pack',
    care: 'Measure with fused leads, one hand where possible, no rings or chains. A slipped probe on a battery can weld and burn.',
  },
  verdict: {
    title: 'Verdict',
    lead: "Measured against planned, with the band in which both agree: the plan's own uncertainty and the accuracy of the reading together.",
    subject: 'Figure',
    subjects: {
      'cruise-current': 'Current at that speed',
      'rest-voltage': 'Resting volts',
      resistance: 'Resistance',
      'joint-resistance': 'Joint resistance',
      'run-time': 'Run time',
      'charge-delivered': 'Charge delivered',
      'energy-delivered': 'Energy delivered',
      'peak-current': 'Peak current',
      'mean-current': 'Mean current',
      speed: 'Top speed',
      'charge-hours': 'Charger done after',
      'standby-current': 'Standby current',
      deceleration: 'Deceleration',
      warming: 'Warming over the air',
    },
    measured: 'Measured',
    planned: 'Planned',
    band: 'Band',
    state: 'Verdict',
    states: { agrees: 'as planned', better: 'better', worse: 'worse', open: 'nothing to compare' },
    gap: (planned, measured) =>
      `Planned ${planned}, measured ${measured}. What explains it, each reading taken in alone:`,
    noCause:
      'No reading so far explains the difference. Read each block under load, the joints, and the mean current.',
    causes: {
      'block-charge': 'Charge at the start by rest volts',
      road: 'Road resistance by speed and current',
      'block-resistance': 'Resistance',
      joint: 'A joint',
      'mean-current': 'More current than planned',
      capacity: 'Less charge than planned',
      cold: 'Colder than planned',
    },
    explains: (percent, minutes) => `explains ${percent}: ${minutes} with it alone`,
  },
  health: {
    title: 'Health of the blocks',
    lead: 'Each fit taken into the plan leaves a point here.',
    block: 'Block',
    date: 'Last measured',
    capacity: 'Capacity',
    resistance: 'Resistance',
    trend: 'Trend',
    advice: 'Advice',
    advices: {
      sound: 'sound',
      watch: 'measure again in some months',
      replace: 'worn: replace',
      'replace-string':
        'worn, its neighbours are not: replace the blocks of the string together (PCK-1)',
    },
    perYear: (percent) => `${percent} a year`,
    source: 'Found by',
    figureOf: 'Figure shown',
    chart: 'Health over the years',
    year: 'Year',
    summary: (blocks) =>
      `Health of ${blocks} ${blocks === 1 ? 'block' : 'blocks'}: capacity against the rated one, resistance against a new one.`,
  },
});
