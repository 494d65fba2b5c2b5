/**
 * Breaks each constant of each formula by 5 % in turn and asks whether a test notices. Prints the
 * survivors and ends with code 1 when there are any. `--only TEXT` keeps files whose path holds TEXT.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { parseSync } from 'vite';
import { createVitest } from 'vitest/node';
import { setMutant } from './mutant-plugin.mjs';
import { ensureInstalled, projectFolder } from './setup.mjs';

ensureInstalled();

const share = 0.05;
const formulasFolder = join(projectFolder, 'shared-core', 'formulas');

/** Calls whose numbers describe an input or a text, not the physics. */
const describing = new Set([
  'number',
  'list',
  'gauge',
  'word',
  'slice',
  'toFixed',
  'toPrecision',
  'at',
]);

/** Numbers that are no constants of the physics, by file and the text of their line, and why. */
const passedOver = [
  ['wiring/ampacity-table.ts', /upTo:/, 'a count of wires: 5 % more is no whole wire more', 'upTo'],
  ['wiring/ampacity.ts', /bundled = 1/, 'a count of wires'],
  ['wiring/flexible-conductors.ts', /< 1e-6/, 'a tolerance for finding a row'],
  ['charge/linear-charge.ts', /1e-12/, 'a tolerance for rounding', '1e-12'],
  ['voltage/charge-from-rest-voltage.ts', /1e-9/, 'a tolerance for rounding', '1e-9'],
  [
    'voltage/charge-from-rest-voltage.ts',
    /findRoot/,
    'an end of the search, where the curve is level',
  ],
  ['rate/peukert-exponent.ts', /1e-9/, 'a tolerance for rounding'],
  ['rate/two-well-lifetime.ts', /1e-14/, 'a tolerance of the root search'],
  ['rate/two-well-fit.ts', /leastShare =|slowestPerH =|fastestPerH =/, 'a bound of the search'],
  ['rate/two-well-fit.ts', /start:|\.map\(\(rate\)/, 'where the search begins and how far it goes'],
  ['rate/two-well-fit.ts', /\.size < 3/, 'a count of ratings: 5 % more is no rating more'],
  ['rate/two-well-pulsed-lifetime.ts', /mostCycles = |cycle \+= 1/, 'a count of cycles'],
];

/** Whether the list passes over a number; a fourth entry keeps it to the number written so behind that word. */
const isPassedOver = (file, source, constant) => {
  const begin = source.lastIndexOf('\n', constant.start) + 1;
  const line = source.slice(begin, source.indexOf('\n', constant.end));
  const written = source.slice(constant.start, constant.end);
  const before = source.slice(begin, constant.start);
  return passedOver.some(
    ([name, pattern, , only]) =>
      file.split('\\').join('/').endsWith(name) &&
      pattern.test(line) &&
      (only === undefined || written === only || before.trimEnd().endsWith(`${only}:`)),
  );
};

const nameOfCall = (node) => node.callee.name ?? node.callee.property?.name ?? '';

/** A number of the code that is a constant of the physics: not an index, a bound of an input, a type. */
const constantsIn = (source, file) => {
  const found = [];
  const visit = (node) => {
    if (node === null || typeof node !== 'object') return;
    if (Array.isArray(node)) return node.forEach((child) => visit(child));
    if (typeof node.type !== 'string') return;
    if (
      node.type.startsWith('TS') &&
      node.type !== 'TSAsExpression' &&
      node.type !== 'TSNonNullExpression' &&
      node.type !== 'TSSatisfiesExpression'
    )
      return;
    if (node.type === 'CallExpression' && describing.has(nameOfCall(node))) return;
    if (node.type === 'MemberExpression' && node.computed && node.property.type === 'Literal')
      return visit(node.object);
    const nearLength = (side) =>
      side?.type === 'MemberExpression' && side.property.name === 'length';
    if (node.type === 'BinaryExpression' && (nearLength(node.left) || nearLength(node.right)))
      return;
    if (node.type === 'Literal' && typeof node.value === 'number' && node.value !== 0)
      found.push({ start: node.start, end: node.end, value: node.value });
    for (const [key, child] of Object.entries(node))
      if (key !== 'parent' && key !== 'typeAnnotation') visit(child);
  };
  visit(parseSync(file, source).program.body);
  const physics = found.filter((constant) => !isPassedOver(file, source, constant));
  return physics.map((constant) => ({
    ...constant,
    line: source.slice(0, constant.start).split('\n').length,
  }));
};

const formulaFiles = (only) =>
  readdirSync(formulasFolder, { recursive: true })
    .map(String)
    .filter((name) => name.endsWith('.ts') && /[\\/]/.test(name))
    .map((name) => join(formulasFolder, name))
    .filter((file) => file.includes(only))
    .toSorted();

/** The reference test of each subject, where a mutant most likely dies, and then the other tests of formulas. */
const ownTest = {
  accessories: 'machine',
  charge: 'machine',
  drive: 'machine',
  pack: 'battery',
  rate: 'rate',
  temperature: 'battery',
  voltage: 'battery',
  wiring: 'wiring',
};
const otherTests = [
  'tests/unit/formulas/',
  'tests/reference/formulas',
  'tests/reference/wiring-published',
];

const main = async () => {
  const { values } = parseArgs({ options: { only: { type: 'string', default: '' } } });
  const silent = { onInit() {} };
  const vitest = await createVitest('test', {
    config: join(projectFolder, 'build', 'mutation.config.ts'),
    watch: false,
    bail: 1,
    isolate: false,
    maxWorkers: 1,
    reporters: [silent],
    project: ['unit', 'reference', 'properties'],
  });
  const specifications = await vitest.globTestSpecifications();
  const inRound = (prefixes) =>
    specifications.filter(({ moduleId }) =>
      prefixes.some((prefix) => relative(projectFolder, moduleId).startsWith(prefix)),
    );
  const others = inRound(otherTests);
  const roundsOf = (file) => {
    const subject = relative(formulasFolder, file).split(/[\\/]/)[0];
    return [inRound([`tests/reference/formulas-${ownTest[subject]}`]), others];
  };

  const passes = async (round) => {
    vitest.state.getFiles().length = 0;
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications(round, true);
    return (
      unhandledErrors.length === 0 && testModules.every((module) => module.state() !== 'failed')
    );
  };
  const change = (file, constant) => {
    setMutant(constant && { ...constant, file, text: String(constant.value * (1 + share)) });
    vitest.invalidateFile(file);
  };

  if (!(await passes(others))) {
    console.error('The tests fail without any change; mend them first.');
    await vitest.close();
    process.exit(2);
  }
  let count = 0;
  const survivors = [];
  for (const file of formulaFiles(values.only)) {
    const source = readFileSync(file, 'utf8');
    for (const constant of constantsIn(source, file)) {
      count += 1;
      change(file, constant);
      let alive = true;
      for (const round of roundsOf(file)) alive = alive && (await passes(round));
      if (alive) {
        survivors.push(`${relative(projectFolder, file)}:${constant.line}: ${constant.value}`);
        console.log(survivors.at(-1));
      }
      process.stderr.write(`${count} constants, ${survivors.length} survivors\r`);
      change(file, null);
    }
  }
  await vitest.close();
  console.log(
    `${count} constants changed by ${100 * share} %: ${count - survivors.length} noticed, ${survivors.length} survived`,
  );
  process.exit(survivors.length === 0 ? 0 : 1);
};

await main();
