// Import direction: app -> components -> lib; inside lib each stage reads only what is to its left.
// tests/architecture/import-direction.test.ts proves with a breach tree that every rule bites.
const order = ['math', 'visit', 'diagnostics', 'energy', 'finance', 'sheet', 'appraise'];
const no = (name, from, to, comment) => ({ name, severity: 'error', comment, from, to });
const pure = `^lib/(${order.join('|')})/`;
module.exports = {
  forbidden: [
    no('no-cycles', {}, { circular: true }, 'split the shared part out'),
    no('resolvable', {}, { couldNotResolve: true }, 'a missing package hides every other rule'),
    no('lib-is-the-bottom', { path: '^lib/' }, { path: '^(app|components|scripts)/' }, 'move it down'),
    no('components-below-app', { path: '^components/' }, { path: '^(app|scripts)/' }, 'pass it as a prop'),
    no('components-no-store', { path: '^components/' }, { path: '^lib/store/' }, 'data comes in as a prop'),
    no(
      'pure-no-framework',
      { path: pure },
      { path: '(^|/)node_modules/(react|react-dom|next|@react-pdf|kysely|better-sqlite3)(/|$)' },
      'numbers must be recomputable anywhere',
    ),
    no('pure-no-node', { path: pure }, { dependencyTypes: ['core'] }, 'runs in the browser too'),
    no('pure-no-store', { path: pure }, { path: '^lib/store/' }, 'data comes in as an argument'),
    ...order.map((stage, i) =>
      no(
        `stage-${stage}`,
        { path: `^lib/${stage}/` },
        { path: `^lib/(${order.slice(i + 1).join('|') || '-'})/` },
        'stages read only what is to their left',
      ),
    ),
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
  },
};
