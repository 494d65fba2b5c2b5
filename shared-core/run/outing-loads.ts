import type { Controller } from '../plan/schema/controller.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { legSource } from './leg-source.ts';
import type { LoadSource } from './load-source.ts';

/** The motor load of an outing over time. */
export function outingLoads(
  _machine: Machine,
  _controller: Controller,
  outing: Outing,
  _option: Option,
): LoadSource {
  return legSource(outing.legs);
}
