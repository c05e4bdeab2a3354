// Read by any Node, however old: no syntax newer than modules here, and no imports.

/** Oldest Node this program runs on; the same as "engines" in package.json. */
export const OLDEST_NODE = '20.19';

/**
 * What is wrong with a Node version, in a sentence; empty when nothing is.
 *
 * @param {string} version like "18.20.4"
 */
export function nodeProblem(version) {
  const need = OLDEST_NODE.split('.').map(Number);
  const have = version.split('.').map(Number);
  const major = (have[0] || 0) - (need[0] || 0);
  if (major > 0 || (major === 0 && (have[1] || 0) >= (need[1] || 0))) return '';
  return `Keepworth needs Node.js ${OLDEST_NODE} or newer; this is ${version}. Install a newer one from https://nodejs.org and try again.`;
}

/** Ends the program with a sentence when Node is too old. */
export function requireNode() {
  const problem = nodeProblem(process.versions.node);
  if (problem !== '') {
    console.error(problem);
    process.exit(1);
  }
}
