import { mergeConfig } from 'vitest/config';
import base from './vitest.config.ts';
import { mutantPlugin } from './mutant-plugin.mjs';

/** The tests with one constant of one formula changed; see mutate.mjs. */
export default mergeConfig(base, { plugins: [mutantPlugin] });
