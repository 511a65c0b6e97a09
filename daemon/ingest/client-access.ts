/** Who asks to be let in to the broker. */
export interface Knocking {
  client: string;
  username: string | undefined;
  password: Buffer | undefined;
  address: string;
}

/** What a client may do; asked for every message, so each answer is quick. */
export interface Guest {
  /** Null for a client without a name. */
  readonly name: string | null;
  publishes(topic: string, payload: Uint8Array): 'take' | 'let-go' | 'end';
  listens(filter: string): boolean;
}

export type Admission =
  | { readonly kind: 'in'; readonly guest: Guest }
  /** The codes are those of CONNACK. **Source:** MQTT 3.1.1 (2014), section 3.2.2.3. */
  | { readonly kind: 'refused'; readonly code: 3 | 4 | 5 };

/** Who may use the embedded broker, and as what. */
export interface ClientAccess {
  admit(knocking: Knocking): Promise<Admission>;
  /** A guest was allowed to listen. */
  listened(client: string, filter: string, guest: Guest): void;
  /** Calls back with whether a guest may stay after something changed; returns how to stop. */
  onChange(listener: (mayStay: (guest: Guest) => boolean) => void): () => void;
}

const welcome: Guest = { name: null, publishes: () => 'take', listens: () => true };

/** Anyone may come in and do everything: how a broker is tried out. */
export const everyone: ClientAccess = {
  admit: async () => ({ kind: 'in', guest: welcome }),
  listened: () => {},
  onChange: () => () => {},
};
