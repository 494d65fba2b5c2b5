import { describe, expect, test } from 'vitest';
import { solveNetwork, type NetworkLoad } from '#core/wiring/network.ts';

const load = (node: number, rest: Partial<NetworkLoad>): NetworkLoad => ({
  node,
  currentA: 0,
  powerW: 0,
  conductanceS: 0,
  ...rest,
});
const source = { node: 0, emfV: 24, resistanceOhm: 0.02 };

describe('the network of the wiring', () => {
  test("a current through source and wire drops by Ohm's law", () => {
    const solved = solveNetwork({
      nodeCount: 2,
      paths: [{ from: 0, to: 1, resistanceOhm: 0.03 }],
      sources: [source],
      loads: [load(1, { currentA: 10 })],
    });
    expect(solved.ok && solved.voltageV[0]).toBeCloseTo(24 - 10 * 0.02, 6);
    expect(solved.ok && solved.voltageV[1]).toBeCloseTo(24 - 10 * 0.05, 6);
  });

  test('a constant power takes the upper root of the quadratic: V = (E + sqrt(E² - 4 R P))/2', () => {
    const solved = solveNetwork({
      nodeCount: 2,
      paths: [{ from: 0, to: 1, resistanceOhm: 0.08 }],
      sources: [source],
      loads: [load(1, { powerW: 800 })],
    });
    expect(solved.ok && solved.voltageV[1]).toBeCloseTo(
      (24 + Math.sqrt(24 ** 2 - 4 * 0.1 * 800)) / 2,
      6,
    );
  });

  test('a power beyond E²/(4 R) collapses the supply instead of giving a number', () => {
    const paths = [{ from: 0, to: 1, resistanceOhm: 0.08 }];
    const most = 24 ** 2 / (4 * 0.1);
    expect(
      solveNetwork({
        nodeCount: 2,
        paths,
        sources: [source],
        loads: [load(1, { powerW: most * 0.999 })],
      }).ok,
    ).toBe(true);
    expect(
      solveNetwork({
        nodeCount: 2,
        paths,
        sources: [source],
        loads: [load(1, { powerW: most * 1.01 })],
      }),
    ).toEqual({ ok: false, reason: 'collapse' });
  });

  test('two equal ways to the same place share the current', () => {
    const way = { from: 0, to: 1, resistanceOhm: 0.04 };
    const solved = solveNetwork({
      nodeCount: 2,
      paths: [way, way],
      sources: [source],
      loads: [load(1, { currentA: 12 })],
    });
    expect(
      solved.ok && [...solved.pathCurrentA].map((each) => Math.round(each * 1e6) / 1e6),
    ).toEqual([6, 6]);
  });

  test('a node that nothing feeds stands at zero volts', () => {
    const solved = solveNetwork({
      nodeCount: 3,
      paths: [{ from: 0, to: 1, resistanceOhm: 0.1 }],
      sources: [source],
      loads: [],
    });
    expect(solved.ok && solved.voltageV[2]).toBe(0);
  });

  test('a charging current fed in at a node lifts it above the source', () => {
    const solved = solveNetwork({
      nodeCount: 2,
      paths: [{ from: 0, to: 1, resistanceOhm: 0.05 }],
      sources: [source],
      loads: [load(1, { currentA: -5 })],
    });
    expect(solved.ok && solved.voltageV[1]).toBeCloseTo(24 + 5 * 0.07, 6);
    expect(solved.ok && solved.sourceCurrentA[0]).toBeCloseTo(-5, 6);
  });
});
