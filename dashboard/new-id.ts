import { v7 } from 'uuid';

/**
 * A fresh UUID (version 7), also where the browser makes none itself: over plain HTTP from another
 * machine. What was entered later sorts later.
 *
 * **Source:** RFC 9562 (2024), section 5.7.
 */
export function newId(): string {
  return v7();
}
