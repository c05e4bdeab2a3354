import { expect, test } from 'vitest';
import { outdated, planRequest } from '@/components/offline/worker/plan-request';

const HERE = 'http://127.0.0.1:3000';
const plan = (path: string, mode = 'navigate', method = 'GET') =>
  planRequest({ method, url: new URL(path, HERE).href, mode }, HERE);

test('wiring: pages have a stand-in, built files are kept, data and whatever is sent always go to the office', () => {
  expect(plan('/visits/visit-1')).toEqual({ kind: 'page', keptAs: '/kept/visit', keep: false });
  expect(plan('/visits/visit-1/compare')).toEqual({ kind: 'page', keptAs: '/kept/compare', keep: false });
  expect(plan('/')).toEqual({ kind: 'page', keptAs: '/', keep: true });
  // A filtered list would hide the rest when it is shown for the whole.
  expect(plan('/?search=elm')).toEqual({ kind: 'page', keptAs: '/', keep: false });
  expect(plan('/kept/visit?visit=a')).toEqual({ kind: 'page', keptAs: '/kept/visit', keep: false });
  expect(plan('/_next/static/chunks/a.js', 'no-cors')).toEqual({ kind: 'asset' });
  const passed = [
    plan('/visits/visit-1/draft', 'cors'),
    plan('/visits/visit-1/draft', 'cors', 'PUT'),
    plan('/visits/visit-1', 'cors'),
    plan('/visits/visit-1', 'navigate', 'POST'),
    plan('/visits/visit-1/sheet.pdf'),
    plan('/visits/visit-1/appraisal.json'),
    plan('/everything.json'),
    plan('/_next/static/a.js', 'cors', 'POST'),
    plan('http://elsewhere.example/_next/static/a.js', 'cors'),
  ];
  expect(passed.map(({ kind }) => kind)).toEqual(passed.map(() => 'pass'));
  expect(passed).toHaveLength(9);
});

test('wiring: a new build drops old pages and all built files but those of the build before', () => {
  const names = [
    'keepworth-assets-1',
    'keepworth-pages-1',
    'keepworth-assets-2',
    'keepworth-pages-2',
    'other',
    'keepworth-assets-3',
    'keepworth-pages-3',
  ];
  expect(outdated(names, '3')).toEqual(['keepworth-assets-1', 'keepworth-pages-1', 'keepworth-pages-2']);
  expect(outdated(['keepworth-assets-3', 'keepworth-pages-3'], '3')).toEqual([]);
});
