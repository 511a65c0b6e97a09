import { createHash } from 'node:crypto';

/**
 * Makes npm’s bill of materials say what runs on a board, and the same each time: npm puts the hour and a
 * new number into it, and names the folder it was made in.
 *
 * @param {any} bill what `npm sbom` wrote, CycloneDX
 * @param {{ name: string, version: string, runs: ReadonlySet<string>, seconds: number }} facts `runs`:
 *   names with versions, as `zod@4.6.7`; the time is epoch seconds
 */
export function billOfMaterials(bill, { name, version, runs, seconds }) {
  const own = bill.metadata.component['bom-ref'];
  const isTold = (/** @type {string} */ ref) => ref === own || runs.has(ref);
  const told = {
    ...bill,
    metadata: {
      ...bill.metadata,
      timestamp: new Date(seconds * 1000).toISOString(),
      component: { ...bill.metadata.component, type: 'application', name, version },
    },
    components: bill.components.filter((/** @type {any} */ one) => isTold(one['bom-ref'])),
    dependencies: bill.dependencies
      .filter((/** @type {any} */ one) => isTold(one.ref))
      .map((/** @type {any} */ one) => ({ ...one, dependsOn: one.dependsOn.filter(isTold) })),
  };
  delete told.serialNumber;
  const sum = createHash('sha256').update(JSON.stringify(told)).digest('hex');
  // A UUID of version 8: of our own making, out of what the bill says. **Source:** RFC 9562, 5.8.
  const uuid = `${sum.slice(0, 8)}-${sum.slice(8, 12)}-8${sum.slice(13, 16)}-a${sum.slice(17, 20)}-${sum.slice(20, 32)}`;
  return { ...told, serialNumber: `urn:uuid:${uuid}` };
}
