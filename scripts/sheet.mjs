// npm run sheet -- visit.json out.pdf: the main job without a browser.
import { requireNode } from './bootstrap-node.mjs';

requireNode();
// File names are meant from where the user stands; npm moves to the project's folder and says where it came from.
const from = process.env.npm_lifecycle_event === 'sheet' ? process.env.INIT_CWD : undefined;
import('./bootstrap-typescript.mjs').then((module) =>
  module.runTypeScript('sheet-command.ts', process.argv.slice(2), { KEEPWORTH_CWD: from || process.cwd() }),
);
