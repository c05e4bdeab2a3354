// npm test: install what is missing, then every check, from the fastest to the slowest; stops at the first that fails.
import { requireNode } from './bootstrap-node.mjs';

requireNode();
import('./test-stages.mjs').then((module) => module.runStages(process.argv.slice(2)));
