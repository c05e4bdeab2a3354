import path from 'node:path';

/**
 * The one folder everything is kept in: `KEEPWORTH_DATA`, else `data` in the working folder.
 *
 * @param env  environment variables
 * @param cwd  working folder
 * @returns absolute path
 * Check: tests/store/open-store.test.ts
 */
export function dataFolder(env: Readonly<Record<string, string | undefined>>, cwd: string): string {
  const named = env.KEEPWORTH_DATA?.trim();
  return path.resolve(cwd, named === undefined || named === '' ? 'data' : named);
}
