import { z } from 'zod';

/** Surfaces whose rolling resistance and grip the core holds in a table. */
export const surfaceIdSchema = z
  .enum([
    'asphalt',
    'worn-paving',
    'packed-gravel',
    'loose-gravel',
    'short-grass',
    'long-grass',
    'soil',
    'sand',
    'indoor-floor',
  ])
  .meta({ title: 'Surface' });
export type SurfaceId = z.infer<typeof surfaceIdSchema>;
