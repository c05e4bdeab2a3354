import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

export const ROOT = path.resolve(import.meta.dirname, '../..');

/** Folders of the pure part of lib, in the order of the stages. */
export const PURE_FOLDERS = ['math', 'visit', 'diagnostics', 'energy', 'finance', 'sheet', 'appraise'].map(
  (stage) => `lib/${stage}`,
);

const LEFT_OUT = new Set(['node_modules', '.git', '.next', 'data', 'test-results', 'breach']);

/**
 * Files below a folder of the project, by path from its root.
 *
 * @param folder  '.' for all
 * @param endings file name endings; data folders inside lib are included, the program's own data folder is not
 */
export function filesUnder(folder: string, endings: readonly string[]): string[] {
  return readdirSync(path.join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const file = path.posix.join(folder, entry.name);
    const inLib = file.startsWith('lib/') || file.startsWith('components/');
    if (entry.isDirectory()) return LEFT_OUT.has(entry.name) && !inLib ? [] : filesUnder(file, endings);
    return endings.some((ending) => entry.name.endsWith(ending)) ? [file] : [];
  });
}

export function textOf(file: string): string {
  return readFileSync(path.join(ROOT, file), 'utf8');
}
