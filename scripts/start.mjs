// npm start: install, build, create the database, serve. Each step only when it is needed.
// Plain Node, and readable by an old one, which gets a sentence instead of a syntax error.
import { requireNode } from './bootstrap-node.mjs';

requireNode();
import('./start-keepworth.mjs').then((module) => module.startKeepworth());
