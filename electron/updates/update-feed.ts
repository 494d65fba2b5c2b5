/**
 * Address that new versions come from. Only https: whoever can change an answer on the way
 * would else choose what is installed.
 *
 * @throws when the build was given an address that is none or is not https
 */
export const checkedFeed = (setting: string): string => {
  const { protocol, username, password } = new URL(setting);
  if (protocol !== 'https:' || username !== '' || password !== '') {
    throw new Error('The update feed must be an https address without a name or password in it.');
  }
  return setting;
};
