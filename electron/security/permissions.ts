import type { Session } from 'electron';

/** The page needs no permission and no device, so every way of asking is answered with no. */
export const denyAllPermissions = (session: Session): void => {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.setDisplayMediaRequestHandler((_request, answer) => answer({}));
  for (const event of ['select-hid-device', 'select-serial-port', 'select-usb-device'] as const) {
    session.on(event as 'select-hid-device', (chosen, _details, answer) => {
      chosen.preventDefault();
      answer('');
    });
  }
  // Exports go through the shell's own dialogs; a download on the page's own account does not.
  session.on('will-download', (download) => download.preventDefault());
};
