import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/**
 * A look for breaches on a page. Only breaches are written out: what passes would be described node by node, thousands
 * of them. The page has no frames of another origin, so no second page is needed to put results together.
 */
export const axeOn = (page: Page): AxeBuilder =>
  new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true);
