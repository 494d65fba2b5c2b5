// The smallest page the shell can serve: it listens to everything and keeps what it hears.
const bridge = globalThis.cellwainShell;
globalThis.heard = [];
globalThis.closeAnswer = 'stay';
globalThis.answersClose = true;

for (const name of Object.keys(bridge.listen)) {
  bridge.listen[name]((message) => {
    globalThis.heard.push({ name, message });
    if (name !== 'closeRequest' || !globalThis.answersClose) return;
    void bridge.call
      .closeSeen({ id: message.id })
      .then(() => bridge.call.closeAnswer({ id: message.id, answer: globalThis.closeAnswer }));
  });
}
void bridge.call.pageReady({});
