import { useState } from 'preact/hooks';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { qrPath } from './qr-code.ts';

/** Where the address is kept by which phones reach the computer in the shed. */
const kept = 'boardcure-phone-address';
const isOfHere = (origin: string) => /\/\/(?:localhost|127\.|\[::1\])/.test(origin);

/** The address that a QR code is to lead to: as typed on this device before, or the page’s own. */
export function usePhoneAddress(): { address: string; change: (address: string) => void } {
  const [address, setAddress] = useState(() => localStorage.getItem(kept) ?? location.origin);
  return {
    address,
    change(typed) {
      const plain = typed.trim().replace(/\/+$/, '');
      setAddress(plain);
      localStorage.setItem(kept, plain);
    },
  };
}

const exampleAddress = 'http://192.168.1.20:8080';

/** Asks for that address, and says so where a phone could not follow it. */
export function PhoneAddress({ address, change }: ReturnType<typeof usePhoneAddress>) {
  const { phone } = useReader().words.print;
  return (
    <div class="field print-head print-address">
      <label for="phone-address">{phone.address}</label>
      <input
        id="phone-address"
        class="input"
        type="url"
        value={address}
        onChange={(event) => change(event.currentTarget.value)}
      />
      {isOfHere(address) && <p class="field-fault">{phone.notFollowed(exampleAddress)}</p>}
    </div>
  );
}

/** A QR code that leads to the page of a batch. */
export function BatchCode({ id, address, mm }: { id: string; address: string; mm: number }) {
  const { phone } = useReader().words.print;
  const { side, path } = qrPath(`${address}/${batchAddress(id)}`);
  return (
    <svg
      class="qr"
      width={`${mm}mm`}
      height={`${mm}mm`}
      viewBox={`0 0 ${side} ${side}`}
      role="img"
      aria-label={phone.code}
      shape-rendering="crispEdges"
    >
      <rect width={side} height={side} class="qr-ground" />
      <path d={path} class="qr-dark" />
    </svg>
  );
}
