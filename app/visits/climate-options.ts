import { fieldBook } from '@/components/draft/build-field-book';
import type { ClimateOption } from '@/components/visit/climate-field';
import { t } from '@/components/words/words';
import { cities } from '@/lib/energy/city-list';

/** Climates that can be chosen: cities by name, then the regions of the schema. */
export function climateOptions(): ClimateOption[] {
  const byName = [...cities].sort((a, b) => `${a.state} ${a.city}`.localeCompare(`${b.state} ${b.city}`));
  const regions = fieldBook()['site.climate.region']?.options ?? [];
  return [
    ...byName.map(({ slug, city, state }) => ({
      kind: 'city' as const,
      key: slug,
      name: `${city}, ${state}`,
    })),
    ...regions.map((region) => ({
      kind: 'region' as const,
      key: region,
      name: t('house.region', { region }),
    })),
  ];
}
