import type { SurfaceId } from '../plan/schema/surface.ts';

/** Rolling resistance and grip of one surface, with the range the sources span. */
export interface Surface {
  readonly id: SurfaceId;
  readonly name: { readonly en: string; readonly de: string };
  /** Coefficient of rolling resistance: force over weight. */
  readonly rollingLow: number;
  readonly rolling: number;
  readonly rollingHigh: number;
  /** Coefficient of friction between rubber tread and surface, dry; `gripPlastic` for hard plastic. */
  readonly gripRubber: number;
  readonly gripPlastic: number;
  readonly sourceClass: 'published' | 'common-practice' | 'from-memory';
  readonly source: string;
}

const handbooks =
  "Rolling resistance: Marks' Standard Handbook for Mechanical Engineers; Carvill, Mechanical Engineer's Data Handbook. Grip: common practice, no source";
const practice = 'Common practice, no source';

/**
 * Surfaces, smooth first. Where a handbook states one figure (asphalt 0.01, worn 0.02, packed gravel 0.012, loose worn
 * gravel 0.04, soil 0.08) it stands as the likely value; the range around it is common practice. Small wheels roll worse
 * than the handbooks' large ones, so the high end is the wider one.
 */
export const surfaces: readonly Surface[] = [
  surface(
    'indoor-floor',
    'Indoor floor',
    'Hallenboden',
    [0.008, 0.012, 0.02],
    [0.7, 0.3],
    practice,
  ),
  surface(
    'asphalt',
    'Asphalt or concrete, new',
    'Asphalt oder Beton, neu',
    [0.008, 0.01, 0.02],
    [0.8, 0.4],
    handbooks,
  ),
  surface(
    'worn-paving',
    'Paving, worn',
    'Pflaster, abgenutzt',
    [0.015, 0.02, 0.04],
    [0.7, 0.35],
    handbooks,
  ),
  surface(
    'packed-gravel',
    'Gravel, packed',
    'Kies, fest',
    [0.01, 0.012, 0.03],
    [0.6, 0.35],
    handbooks,
  ),
  surface('loose-gravel', 'Gravel, loose', 'Kies, lose', [0.03, 0.04, 0.06], [0.5, 0.3], handbooks),
  surface('short-grass', 'Grass, short', 'Rasen, kurz', [0.05, 0.06, 0.08], [0.5, 0.3], practice),
  surface(
    'long-grass',
    'Grass, long or wet',
    'Gras, hoch oder nass',
    [0.07, 0.09, 0.12],
    [0.35, 0.2],
    practice,
  ),
  surface('soil', 'Soil', 'Erdboden', [0.06, 0.08, 0.12], [0.5, 0.35], handbooks),
  surface('sand', 'Sand', 'Sand', [0.1, 0.15, 0.2], [0.4, 0.35], handbooks),
];

const byId = new Map(surfaces.map((entry) => [entry.id, entry]));

/** The surface with this id; the schema admits no other id. */
export function surfaceById(id: SurfaceId): Surface {
  const found = byId.get(id);
  if (found === undefined) throw new Error(`no surface ${id} in the table`);
  return found;
}

function surface(
  id: SurfaceId,
  en: string,
  de: string,
  rolling: readonly [number, number, number],
  grip: readonly [number, number],
  source: string,
): Surface {
  return {
    id,
    name: { en, de },
    rollingLow: rolling[0],
    rolling: rolling[1],
    rollingHigh: rolling[2],
    gripRubber: grip[0],
    gripPlastic: grip[1],
    sourceClass: source === practice ? 'common-practice' : 'published',
    source,
  };
}
