/**
 * A board and a Node that the artefact brings the database engine for.
 *
 * @typedef {object} NativeTarget
 * @property {'x64' | 'arm64'} arch as Node names it
 * @property {number} node its major version
 * @property {string} abi Node’s number for what native modules of that version have to fit
 * @property {string} folder where the engine’s own loader looks for it
 */

/** Node’s numbers for native modules, by major version. **Source:** Node, `doc/abi_version_registry.json`. */
const ABI = { 20: '115', 22: '127', 24: '137' };

/** @returns {NativeTarget[]} every board and every Node that is supported */
export function nativeTargets() {
  return /** @type {const} */ (['x64', 'arm64']).flatMap((arch) =>
    Object.entries(ABI).map(([node, abi]) => ({
      arch,
      node: Number(node),
      abi,
      folder: `lib/binding/node-v${abi}-linux-${arch}`,
    })),
  );
}
