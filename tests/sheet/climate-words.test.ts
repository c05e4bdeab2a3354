import { expect, test } from 'vitest';
import { climateFor } from '@/lib/energy/climate';
import { climateWords } from '@/lib/sheet/climate-words';
import { wordsOf } from '@/lib/sheet/phrase';

test('wiring: a region of the test procedure is told in the language, a city keeps its name', () => {
  const { name } = climateFor({ kind: 'region', region: 'IV' });
  expect(climateWords(wordsOf('en'), name)).toBe(name);
  expect(climateWords(wordsOf('es'), name)).toBe('la región de prueba IV');
  const bins = [20, 50, 90].map((outdoorF) => ({ outdoorF, yearHours: 2920 }));
  expect(climateWords(wordsOf('es'), climateFor({ kind: 'own', bins }).name)).toBe(
    'su propia tabla de temperaturas',
  );
  expect(climateWords(wordsOf('es'), climateFor({ kind: 'city', city: 'Atlanta' }).name)).toMatch(
    /^[A-Z]\w+ [A-Z]{2}$/,
  );
});
