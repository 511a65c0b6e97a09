import { it } from 'vitest';
import { sendAnyBytes, takeAnything } from '../fuzz/broker-messages.ts';

it('no message whatever stops the intake, the short run', () => takeAnything(2000));
it('no bytes whatever stop the broker, the short run', () => sendAnyBytes(100));
