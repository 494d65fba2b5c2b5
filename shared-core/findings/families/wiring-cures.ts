import type { Words } from '../../plan/language.ts';
import type { Conductor } from '../../plan/schema/conductor.ts';
import type { Fuse, WiringBranch } from '../../plan/schema/wiring-branch.ts';
import {
  conductorAreaMm2,
  formatConductor,
  standardConductors,
} from '../../wiring/conductor-facts.ts';
import { fuseForBranch } from '../../wiring/fuse-for-branch.ts';
import { smallestConductor } from '../../wiring/smallest-conductor.ts';
import type { CureChange, CureStatement } from '../cure.ts';
import type { RuleVoice } from '../rule.ts';
import type { WiredBranch, WiredOption } from './wiring-rule.ts';

/** Another wire in a branch: `Plan 4 mm² in Main line (now 1.5 mm²)`. */
export function wireCure(wired: WiredBranch, size: Conductor | null): CureStatement[] {
  if (size === null) return [];
  const { branch, path } = wired;
  const text = (language: 'en' | 'de') => formatConductor(size, language);
  const unknown = { en: 'not known', de: 'nicht bekannt' };
  const now = (language: 'en' | 'de') =>
    branch.conductor === null ? unknown[language] : formatConductor(branch.conductor, language);
  if (branch.conductor !== null && text('en') === now('en')) return [];
  return [
    {
      does: {
        en: `Plan ${text('en')} in ${branch.name} (now ${now('en')})`,
        de: `${text('de')} in ${branch.name} einplanen (jetzt ${now('de')})`,
      },
      changes: [{ path: `${path}.conductor`, value: size }],
    },
  ];
}

/** The smallest wire that passes every check of this branch as it stands. */
export function smallestWireCure(wired: WiredBranch): CureStatement[] {
  return wireCure(wired, wired.found.smallest.conductor);
}

/**
 * The fuse this branch asks for, with a thicker wire where its own does not stand that fuse.
 *
 * @param keepWire true: only where the wire stands it as it is
 */
export function fuseCure(
  entry: WiredOption,
  wired: WiredBranch,
  voice: RuleVoice,
  keepWire = false,
): CureStatement[] {
  const { found, branch, path } = wired;
  const { fuseMargin, fuseDistanceMm } = entry.plan.thresholds.wiring;
  const chosen = fuseForBranch(found, entry.wired, entry.wiring.startSeconds, fuseMargin);
  if (chosen === null) return [];
  const fuse: Fuse = {
    ...chosen,
    fromSourceMm: branch.fuse?.fromSourceMm ?? Math.min(fuseDistanceMm, chosen.fromSourceMm ?? 0),
  };
  // A wire nobody has looked at is planned together with its fuse.
  const stands = !found.conductorAssumed && found.ampacityA >= fuse.ratedA;
  if (!stands && keepWire) return [];
  const size = stands ? null : wireFor(entry, wired, fuse);
  if (!stands && size === null) return [];
  const changes: CureChange[] = [{ path: `${path}.fuse`, value: fuse }];
  if (size !== null) changes.push({ path: `${path}.conductor`, value: size });
  return [{ does: fuseWords(wired, fuse, size, voice), changes }];
}

const fuseKind: Readonly<Record<Fuse['class'], Words>> = {
  blade: { en: 'blade fuse', de: 'Flachsicherung' },
  'bolt-down': { en: 'bolt-down fuse', de: 'Streifensicherung' },
  'high-breaking': { en: 'high-breaking fuse', de: 'Sicherung mit hohem Ausschaltvermögen' },
  glass: { en: 'glass fuse', de: 'Glassicherung' },
  'breaker-manual': { en: 'hand-closed breaker', de: 'Schutzschalter mit Hebel' },
  'breaker-auto-reset': { en: 'self-closing breaker', de: 'selbst schließender Schutzschalter' },
};

function fuseWords(
  { branch }: WiredBranch,
  fuse: Fuse,
  size: Conductor | null,
  voice: RuleVoice,
): Words {
  const amps = voice.say(fuse.ratedA, 'A');
  const volts = fuse.ratedVoltageV === null ? '' : `, ${voice.say(fuse.ratedVoltageV, 'V')}`;
  const before = branch.fuse === null ? null : voice.say(branch.fuse.ratedA, 'A');
  const kind = fuseKind[fuse.class];
  const was = branch.fuse === null ? kind : fuseKind[branch.fuse.class];
  return {
    en: `Fit a ${kind.en} of ${amps}${volts} in ${branch.name} (now ${before === null ? 'none' : `${was.en} ${before}`})${size === null ? '' : `, with ${formatConductor(size, 'en')}`}`,
    de: `${kind.de} ${amps}${volts} in ${branch.name} einbauen (jetzt ${before === null ? 'keine' : `${was.de} ${before}`})${size === null ? '' : `, mit ${formatConductor(size, 'de')}`}`,
  };
}

function wireFor(
  entry: WiredOption,
  { found, branch }: WiredBranch,
  guard: Fuse,
): Conductor | null {
  return smallestConductor(branch, found.conductor.system, {
    continuousA: found.sizingA,
    dropA: found.continuousA,
    guard,
    faultA: found.faultFarA,
    zoneV: found.zoneV,
    dropPercent: entry.plan.thresholds.wiring.dropNotePercent,
    ambientC: found.ambientC,
  }).conductor;
}

/** The same rating as a breaker that is closed by hand. */
export function handBreakerCure(
  branch: WiringBranch,
  path: string,
  voice: RuleVoice,
): CureStatement[] {
  if (branch.fuse === null) return [];
  const amps = voice.say(branch.fuse.ratedA, 'A');
  return [
    {
      does: {
        en: `Plan a hand-closed breaker of ${amps} in ${branch.name} (now self-closing)`,
        de: `Schutzschalter mit Hebel ${amps} in ${branch.name} einplanen (jetzt selbst schließend)`,
      },
      changes: [{ path: `${path}.fuse.class`, value: 'breaker-manual' }],
    },
  ];
}

/**
 * Thicker wires on the whole way to a branch's far end, so that its drop falls to the wanted share. Joints, fuses and
 * contacts keep theirs; where they alone drop more, no wire cures it.
 */
export function dropCure(
  entry: WiredOption,
  wired: WiredBranch,
  way: readonly WiredBranch[],
  voice: RuleVoice,
): CureStatement[] {
  const { found } = wired;
  const allowedV = (entry.plan.thresholds.wiring.dropNotePercent / 100) * found.zoneV;
  const stretch = way
    .filter((step) => !step.found.conductorAssumed)
    .map((step) => ({
      step,
      wireV: (step.found.states.cruising?.currentA ?? 0) * step.found.wireOhm,
    }))
    .filter(({ wireV }) => wireV > 0.1 * found.wayDropV);
  const wireV = stretch.reduce((sum, part) => sum + part.wireV, 0);
  const leftV = allowedV - (found.wayDropV - wireV);
  if (wireV === 0 || leftV <= 0) return [];
  // A tenth more copper than needed: warmer wires and a stiffer supply shift the currents a little.
  const factor = (1.1 * wireV) / leftV;
  const sizes = stretch.map(({ step }) => ({
    step,
    size: standardConductors(step.found.conductor.system).find(
      (size) => conductorAreaMm2(size) >= factor * step.found.areaMm2,
    ),
  }));
  if (sizes.some(({ size }) => size === undefined)) return [];
  const list = (language: 'en' | 'de') =>
    sizes
      .map(
        ({ step, size }) =>
          `${step.branch.name} ${formatConductor(size!, language)} (${language === 'en' ? 'now' : 'jetzt'} ${formatConductor(step.found.conductor, language)})`,
      )
      .join(', ');
  const wanted = voice.say(entry.plan.thresholds.wiring.dropNotePercent, '%');
  return [
    {
      does: {
        en: `Plan thicker wire for at most ${wanted}: ${list('en')}`,
        de: `Dickere Leitung für höchstens ${wanted} einplanen: ${list('de')}`,
      },
      changes: sizes.map(({ step, size }) => ({ path: `${step.path}.conductor`, value: size! })),
    },
  ];
}

/** Branches from the zone's supply to a branch and with it. */
export function wayTo(
  entry: WiredOption,
  all: readonly WiredBranch[],
  end: WiredBranch,
): WiredBranch[] {
  const place = entry.wired.branches.indexOf(end.found);
  return entry.wired.topology.branches[place]!.path.map((index) => all[index]!);
}
