import ts from 'typescript';

/** Something pure code must do without, where it stands. */
export type Impurity = { readonly what: string; readonly line: number };

/** Global names whose mere mention is impure. Others (process, fetch, window ...) the compiler of pure lib refuses. */
const GLOBALS = new Set(['console', 'structuredClone']);

/** Parts of a date in the time zone of the machine. */
const LOCAL_DATE_PARTS = new Set([
  'getFullYear',
  'getMonth',
  'getDate',
  'getDay',
  'getHours',
  'getMinutes',
  'getTimezoneOffset',
]);

/** Words in the language of the machine unless one is named. */
const LOCALE_METHODS = new Set(['toLocaleString', 'toLocaleDateString', 'toLocaleTimeString']);

/**
 * Clock, chance, output, machine language and machine time zone in a source text. Comments and strings do not count.
 */
export function impuritiesIn(text: string): Impurity[] {
  const source = ts.createSourceFile('source.tsx', text, ts.ScriptTarget.ES2023, true, ts.ScriptKind.TSX);
  const found: Impurity[] = [];
  const visit = (node: ts.Node): void => {
    const what = impurityOf(node);
    if (what !== undefined) {
      found.push({ what, line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function impurityOf(node: ts.Node): string | undefined {
  if (ts.isPropertyAccessExpression(node)) {
    const name = `${node.expression.getText()}.${node.name.text}`;
    if (name === 'Date.now' || name === 'Math.random') return name;
    if (LOCAL_DATE_PARTS.has(node.name.text)) return node.name.text;
  }
  if (ts.isNewExpression(node) || ts.isCallExpression(node)) {
    const callee = node.expression.getText();
    const bare = (node.arguments ?? []).length === 0;
    if (bare && callee === 'Date') return 'Date()';
    if (bare && callee.startsWith('Intl.')) return `${callee}()`;
    const method = ts.isPropertyAccessExpression(node.expression) ? node.expression.name.text : '';
    if (bare && LOCALE_METHODS.has(method)) return `${method}()`;
    if (method === 'localeCompare' && (node.arguments ?? []).length < 2) return 'localeCompare()';
  }
  if (ts.isIdentifier(node) && GLOBALS.has(node.text) && !isMemberName(node)) return node.text;
  return undefined;
}

/** True where the identifier is the name of a member, not the global of that name. */
function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
    (ts.isPropertyAssignment(parent) && parent.name === node) ||
    (ts.isPropertySignature(parent) && parent.name === node)
  );
}
