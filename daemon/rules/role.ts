import type { NeededRole, Role } from '../contract/role.ts';
import type { Method } from '../contract/route.ts';

const rank: Record<Role, number> = { look: 1, operate: 2, own: 3 };

/** Whether someone with a role, or with none, may do what a route asks for. */
export function mayDo(role: Role | null, needed: NeededRole): boolean {
  if (needed === 'anyone') return true;
  return role !== null && rank[role] >= rank[needed];
}

/** What a route asks of its callers: what it says, or by its method. */
export function neededRole(route: {
  readonly method: Method;
  readonly role?: NeededRole;
}): NeededRole {
  return route.role ?? (route.method === 'GET' ? 'look' : 'operate');
}

/** Whence a request comes, as far as access goes by it. */
export interface Origin {
  /** The role of the log-in or pairing that it carries; null without one. */
  readonly carried: Role | null;
  /** Whether it comes from the computer itself. */
  readonly isFromHere: boolean;
}

export interface AccessState {
  readonly pinSet: boolean;
  readonly look: 'open' | 'log-in';
}

/**
 * What a request may do. Until a PIN is set the computer itself may do everything; from then on
 * being there counts for nothing, since other programs and people are there too.
 */
export function roleOf(origin: Origin, { pinSet, look }: AccessState): Role | null {
  if (origin.carried !== null) return origin.carried;
  if (!pinSet && origin.isFromHere) return 'own';
  return look === 'open' ? 'look' : null;
}
