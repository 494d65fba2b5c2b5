/**
 * Script put before everything else in each page: a `require('electron')` for the preload and a
 * list of violations of the content policy.
 */
export const pageScript = (preload, preferences) => `(() => {
  globalThis.standinViolations = [];
  document.addEventListener('securitypolicyviolation', (event) => {
    globalThis.standinViolations.push(event.violatedDirective + ' ' + event.blockedURI + ' ' + event.sample);
  });
  if (globalThis !== globalThis.top) return;
  const listeners = new Map();
  globalThis.standinReceive = (channel, message) => {
    for (const listener of [...(listeners.get(channel) ?? [])]) listener({}, message);
  };
  const invoke = globalThis.standinInvoke;
  const ipcRenderer = {
    invoke: (channel, payload) => invoke(channel, payload),
    on: (channel, listener) => listeners.set(channel, (listeners.get(channel) ?? []).concat(listener)),
    removeListener: (channel, listener) =>
      listeners.set(channel, (listeners.get(channel) ?? []).filter((entry) => entry !== listener)),
  };
  const freeze = (value) => {
    if (typeof value !== 'object' || value === null) return value;
    for (const part of Object.values(value)) freeze(part);
    return Object.freeze(value);
  };
  const contextBridge = {
    exposeInMainWorld: (name, api) =>
      Object.defineProperty(globalThis, name, { value: freeze(api), enumerable: true }),
  };
  const require = (name) => {
    if (name !== 'electron') throw new Error('A sandboxed preload cannot load ' + name);
    return { contextBridge, ipcRenderer };
  };
  const process = ${JSON.stringify({ platform: process.platform, argv: preferences.additionalArguments })};
  (function (require, process, module, exports) {${preload}\n})(require, process, { exports: {} }, {});
})()`;
