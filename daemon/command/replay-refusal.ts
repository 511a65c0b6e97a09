/** A replay that cannot go on; the message says what to do. */
export class ReplayRefusal extends Error {
  override readonly name = 'ReplayRefusal';
}
