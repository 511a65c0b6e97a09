import type { Gate } from '../../contract/gate.ts';

/** The job as it stands within a sentence, in the nominative. */
export const gateNames: Readonly<Record<Gate, string>> = {
  turn: 'kääntö',
  stack: 'pinoaminen',
  mount: 'asennus',
  sand: 'hionta',
  recoat: 'uusi kerros',
};

/** The job as it stands after “valmis”, in the illative. */
export const gateTo: Readonly<Record<Gate, string>> = {
  turn: 'kääntämiseen',
  stack: 'pinoamiseen',
  mount: 'asentamiseen',
  sand: 'hiomiseen',
  recoat: 'uuteen kerrokseen',
};

/** How the trade tests for a job. */
export const gateTests: Readonly<Record<Gate, string>> = {
  turn: 'Kosketa sormen selkämyksellä: mitään ei irtoa, eikä jälkeä jää.',
  stack: 'Paina kämmentä pintaan viisi sekuntia: se irtoaa puhtaasti.',
  mount: 'Paina kämmentä lujasti pintaan viisi sekuntia: se irtoaa puhtaasti.',
  sand: 'Kokeile paperia reunaan: se pölyää eikä rullaa tai tukkeudu.',
  recoat: 'Paina peukalonkynnellä: jälkeä ei jää, eikä rättiin tartu väriä.',
};
