import { z } from 'zod';

/*
 * Import this first, before any other module of the page. The content security policy forbids
 * code from text: zod must not try it, and trusted types let through only what is named here.
 */
z.config({ jitless: true });

type TrustedTypesFactory = {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string; createHTML(html: string): string },
  ): unknown;
};

const factory = (globalThis as { trustedTypes?: TrustedTypesFactory }).trustedTypes;

factory?.createPolicy('default', {
  createScriptURL: (url) => {
    if (new URL(url, location.href).origin !== location.origin) {
      throw new TypeError('Only scripts of this program may run.');
    }
    return url;
  },
  // Emptying an element by innerHTML is the one use a library makes of it.
  createHTML: (html) => {
    if (html !== '') throw new TypeError('The page builds no markup from text.');
    return html;
  },
});
