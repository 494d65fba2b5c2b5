import type { Plan } from '../schema/plan.ts';
import { campsiteTug } from './campsite-tug.ts';
import { marketScooter } from './market-scooter.ts';
import { orchardCart } from './orchard-cart.ts';

const samples = {
  'orchard-cart': {
    make: orchardCart,
    about:
      'A 24 V hand-guided cart with lights and radio: two blocks, one lithium pack, or two strings?',
  },
  'campsite-tug': {
    make: campsiteTug,
    about: 'A seated tug on sloping lanes: 24 V lead against 36 V lithium.',
  },
  'market-scooter': {
    make: marketScooter,
    about: 'A scooter in daily use with one weak block: new pair, or lithium?',
  },
} as const satisfies Record<string, { make: () => Plan; about: string }>;

export type SampleName = keyof typeof samples;

/** Names of the sample plans; the first opens on the first start. */
export const sampleNames = Object.keys(samples) as readonly SampleName[];

/** A fresh copy of a sample plan. Every sample is invented and says so. */
export function samplePlan(name: SampleName): Plan {
  return samples[name].make();
}

/** What a sample shows, one line. */
export function sampleAbout(name: SampleName): string {
  return samples[name].about;
}

export function isSampleName(name: string): name is SampleName {
  return Object.hasOwn(samples, name);
}
