import type { Session } from '../../daemon/contract/access.ts';
import type { Words } from '../words/words.ts';

/** What this device may do and why. */
export function standingLine(session: Session, { standings }: Words['access']): string {
  const { role, by, look, pinSet } = session;
  switch (by) {
    case 'log-in':
      return role === 'own' ? standings.mayEverything : standings.mayRecord;
    case 'pairing':
      return standings.tablet;
    case 'this-computer':
      return standings.thisComputer;
    case 'network':
      return pinSet ? standings.network : standings.networkWithoutPin;
    case 'nothing':
      return look === 'log-in' && !pinSet ? standings.closedWithoutPin : standings.closed;
  }
}
