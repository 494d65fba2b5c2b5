/**
 * Content security policy of the page, the same under the desktop shell and in a browser.
 * The nonce admits the two style elements a control library adds; nothing else is inline.
 *
 * @param nonce fresh random text of one answer, letters and digits only
 */
export const contentPolicy = (nonce: string): string =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' 'nonce-${nonce}'`,
    "font-src 'self'",
    "worker-src 'self'",
    "img-src 'self' data: blob:",
    "connect-src 'none'",
    "object-src 'none'",
    "frame-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
    "require-trusted-types-for 'script'",
    'trusted-types default',
  ].join('; ');

/** Headers every answer carries beside its type. */
export const protectiveHeaders = (nonce: string): Readonly<Record<string, string>> => ({
  'content-security-policy': contentPolicy(nonce),
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy':
    'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=(), bluetooth=(), payment=()',
  'cache-control': 'no-store',
});
