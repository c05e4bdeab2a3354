// npm run bench: how long the parts take, as ratios within one run.
import { requireNode } from './bootstrap-node.mjs';

requireNode();
import('./bootstrap-typescript.mjs').then((module) =>
  module.runTypeScript('bench-command.ts', process.argv.slice(2)),
);
