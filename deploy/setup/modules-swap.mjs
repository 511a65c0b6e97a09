import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { carriesStamp } from './modules-stamp.mjs';

const STAGING = 'staging-';

/**
 * Where modules are in use, and where they go when replaced.
 *
 * @param {string} root the project's folder
 */
export function modulesFolders(root) {
  return { inUse: join(root, 'node_modules'), old: join(root, '.install', 'old') };
}

/**
 * A fresh folder to install into; each attempt has its own, because an npm whose caller was killed
 * goes on writing to the one it was given.
 *
 * @param {string} root the project's folder
 */
export function newStaging(root) {
  const staging = join(root, '.install', `${STAGING}${process.pid}-${Date.now()}`);
  mkdirSync(staging, { recursive: true });
  return staging;
}

/**
 * Throws away what came to nothing.
 *
 * @param {string} staging
 */
export function removeStaging(staging) {
  remove(staging);
}

/**
 * Puts the staged modules in place of those in use; each step leaves either whole.
 *
 * @param {string} root the project's folder
 * @param {string} staging holds the node_modules to put in place, with their stamp
 */
export function swapIn(root, staging) {
  const { inUse, old } = modulesFolders(root);
  if (existsSync(inUse)) {
    remove(old);
    renameSync(inUse, old);
  }
  renameSync(join(staging, 'node_modules'), inUse);
  remove(staging);
  remove(old);
}

/**
 * Mends what a process that died while installing left: completes its swap if what it staged is
 * what is wanted, otherwise throws the staged away and brings the old modules back.
 *
 * @param {string} root the project's folder
 * @param {import('./modules-stamp.mjs').ModulesStamp} wanted
 * @returns {'completed' | 'brought-back' | 'nothing-to-mend'}
 */
export function mendSwap(root, wanted) {
  const { inUse, old } = modulesFolders(root);
  const left = leftStagings(root);
  const whole = left.find((staging) => carriesStamp(join(staging, 'node_modules'), wanted));
  const mustComplete = whole !== undefined && !carriesStamp(inUse, wanted);
  if (mustComplete) swapIn(root, whole);
  for (const staging of left) remove(staging);
  if (mustComplete) return 'completed';
  if (!existsSync(inUse) && existsSync(old)) {
    renameSync(old, inUse);
    return 'brought-back';
  }
  remove(old);
  return 'nothing-to-mend';
}

/** @param {string} root */
function leftStagings(root) {
  const install = join(root, '.install');
  return readdirSync(install)
    .filter((name) => name.startsWith(STAGING))
    .map((name) => join(install, name));
}

/**
 * Removes what a swap left over, if it may; modules in use do not depend on it.
 *
 * @param {string} root the project's folder; its modules in use carry the wanted stamp
 */
export function tidySwap(root) {
  const { old } = modulesFolders(root);
  if (!existsSync(old)) return;
  try {
    remove(old);
  } catch {
    // A user who may only read this folder can run it all the same.
  }
}

/** @param {string} folder */
function remove(folder) {
  rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
}
