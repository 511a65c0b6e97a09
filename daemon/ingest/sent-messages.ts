/** Messages of ours that another broker has not acknowledged yet. */
export function sentMessages() {
  const waiting = new Map<number, { done: () => void; lost: (cause: Error) => void }>();
  return {
    /** Settles with the acknowledgement of the packet; rejects when the connection is lost before. */
    acknowledged: (messageId: number): Promise<void> =>
      new Promise((done, lost) => waiting.set(messageId, { done, lost })),
    /** @param refusal - the broker’s code where it says no; 0 or left out where it took the message */
    settle(messageId: number, refusal = 0): void {
      const message = waiting.get(messageId);
      waiting.delete(messageId);
      if (refusal === 0) message?.done();
      else message?.lost(new Error(`the MQTT broker refused it with code ${refusal}`));
    },
    connectionLost(): void {
      for (const { lost } of waiting.values()) {
        lost(new Error('the connection to the MQTT broker was lost'));
      }
      waiting.clear();
    },
  };
}
