/** The log-in, which any page may ask for when something was sent that needs the PIN. */
export const pin = {
  needed: 'This needs the PIN',
  keptUntilThen: 'What you entered is kept, and sent once you are logged in.',
  notNow: 'Not now',
  label: 'PIN',
  device: 'What this device is called',
  deviceHint: 'May be left out; it stands in the list of devices',
  logIn: 'Log in',
};
