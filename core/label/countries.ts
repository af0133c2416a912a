import type { Country, CountryId, DrinkingLimit, DrinkSize, Guidance, Remark } from './country.ts'
import type { Cited } from './sources.ts'

type SourceList = Cited['sources']

const drink = (
  drinkG: number,
  trust: Cited['trust'],
  sources: SourceList,
  pureMl: number | null = null,
): DrinkSize => ({
  drinkG,
  pureMl,
  trust,
  sources,
})

/** Where another size is in use as well, from memory. */
const doubtful = (otherG: number, size: DrinkSize): DrinkSize => ({ ...size, otherG })

const limit = (
  who: DrinkingLimit['who'],
  amount: number,
  unit: DrinkingLimit['unit'],
  per: DrinkingLimit['per'],
): DrinkingLimit => ({
  who,
  amount,
  unit,
  per,
})

const menWomen = (
  men: number,
  women: number,
  unit: DrinkingLimit['unit'],
  per: DrinkingLimit['per'] = 'day',
): readonly DrinkingLimit[] => [limit('men', men, unit, per), limit('women', women, unit, per)]

const guidance = (
  limits: readonly DrinkingLimit[],
  remarks: readonly Remark[],
  trust: Cited['trust'],
  sources: SourceList,
): Guidance => ({ limits, remarks, trust, sources })

const country = (
  id: CountryId,
  names: readonly string[],
  drink: DrinkSize | null,
  guidance: Guidance | null,
): Country => ({ id, names, drink, guidance })

const unsized = (id: CountryId, ...names: readonly string[]): Country => country(id, names, null, null)

/** Standard drinks and what health authorities say; the last rows are countries without a size on record. */
export const countries: readonly Country[] = [
  country(
    'us',
    ['united states', 'us', 'usa', 'united states of america', 'america', 'stati uniti', 'stati uniti d america'],
    drink(14, 'published', ['drinks_table']),
    guidance(menWomen(2, 1, 'drinks'), ['may_be_outdated'], 'memory', ['drinks_table', 'memory']),
  ),
  country(
    'uk',
    [
      ...['united kingdom', 'uk', 'gb', 'gbr', 'great britain', 'britain', 'england', 'scotland', 'wales'],
      ...['northern ireland', 'regno unito', 'gran bretagna', 'inghilterra', 'scozia', 'galles', 'irlanda del nord'],
    ],
    drink(8, 'published', ['uk_cmo_2016', 'icap_table'], 10),
    guidance([limit('everyone', 14, 'drinks', 'week')], ['spread_three_days', 'drink_free_days'], 'published', [
      'uk_cmo_2016',
    ]),
  ),
  country(
    'ireland',
    ['ireland', 'ie', 'irl', 'irlanda', 'republic of ireland', 'eire'],
    drink(10, 'published', ['icap_table']),
    guidance(menWomen(17, 11, 'drinks', 'week'), ['two_free_days'], 'memory', ['icap_table', 'memory']),
  ),
  country(
    'italy',
    ['italy', 'it', 'ita', 'italia'],
    drink(12, 'published', ['drinks_table']),
    guidance([limit('men', 24, 'g', 'day'), limit('women_young_old', 12, 'g', 'day')], [], 'secondary', [
      'drinks_table',
    ]),
  ),
  country(
    'france',
    ['france', 'fr', 'fra', 'francia'],
    drink(10, 'published', ['drinks_table']),
    guidance(
      [limit('everyone', 2, 'drinks', 'day'), limit('everyone', 10, 'drinks', 'week')],
      ['not_every_day'],
      'published',
      ['drinks_table'],
    ),
  ),
  country(
    'germany',
    ['germany', 'de', 'deu', 'germania', 'deutschland'],
    doubtful(10, drink(12, 'memory', ['memory'])),
    guidance(menWomen(24, 12, 'g'), ['newer_is_lower'], 'secondary', ['drinks_table']),
  ),
  country(
    'spain',
    ['spain', 'es', 'esp', 'spagna', 'espana'],
    drink(10, 'memory', ['memory']),
    guidance(menWomen(20, 10, 'g'), [], 'memory', ['memory']),
  ),
  country(
    'australia',
    ['australia', 'au', 'aus'],
    drink(10, 'published', ['intake_table', 'icap_table']),
    guidance([limit('everyone', 10, 'drinks', 'week'), limit('everyone', 4, 'drinks', 'any_day')], [], 'published', [
      'intake_table',
    ]),
  ),
  country(
    'new_zealand',
    ['new zealand', 'nz', 'nzl', 'nuova zelanda', 'aotearoa'],
    drink(10, 'memory', ['memory']),
    guidance(menWomen(15, 10, 'drinks', 'week'), [], 'memory', ['memory']),
  ),
  country(
    'canada',
    ['canada', 'ca', 'can'],
    drink(13.45, 'memory', ['memory', 'drinks_table']),
    guidance([limit('everyone', 2, 'drinks', 'week')], [], 'published', ['intake_table']),
  ),
  country(
    'japan',
    ['japan', 'jp', 'jpn', 'giappone'],
    doubtful(10, drink(20, 'secondary', ['drinks_table'])),
    guidance(menWomen(40, 20, 'g'), ['risk_rises_there'], 'memory', ['drinks_table', 'memory']),
  ),
  country(
    'austria',
    ['austria', 'at', 'aut', 'osterreich'],
    drink(20, 'published', ['kalinowski_2016']),
    guidance(menWomen(24, 16, 'g'), [], 'published', ['intake_table']),
  ),
  country('iceland', ['iceland', 'is', 'isl', 'islanda'], drink(8, 'published', ['kalinowski_2016']), null),
  country('mexico', ['mexico', 'mx', 'mex', 'messico'], doubtful(10, drink(13, 'secondary', ['drinks_table'])), null),
  country('argentina', ['argentina', 'ar', 'arg'], drink(14, 'secondary', ['drinks_table']), null),
  country('chile', ['chile', 'cl', 'chl', 'cile'], drink(14, 'secondary', ['drinks_table']), null),
  country(
    'hong_kong',
    ['hong kong', 'hk', 'hkg', 'hongkong'],
    drink(10, 'published', ['kalinowski_2016']),
    guidance(menWomen(2, 1, 'drinks'), [], 'published', ['kalinowski_2016']),
  ),
  country('india', ['india', 'in', 'ind'], doubtful(10, drink(8, 'secondary', ['drinks_table'])), null),
  country('poland', ['poland', 'pl', 'pol', 'polonia'], drink(10, 'memory', ['memory']), null),
  country(
    'sweden',
    ['sweden', 'se', 'swe', 'svezia'],
    drink(12, 'memory', ['memory']),
    guidance([limit('everyone', 10, 'drinks', 'week')], [], 'memory', ['memory']),
  ),
  country(
    'denmark',
    ['denmark', 'dk', 'dnk', 'danimarca'],
    drink(12, 'memory', ['memory']),
    guidance([limit('everyone', 10, 'drinks', 'week'), limit('everyone', 4, 'drinks', 'any_day')], [], 'memory', [
      'memory',
    ]),
  ),
  country(
    'switzerland',
    ['switzerland', 'ch', 'che', 'svizzera', 'schweiz', 'suisse'],
    drink(12, 'memory', ['memory']),
    null,
  ),
  country(
    'who',
    ['who', 'who audit', 'audit', 'oms', 'world health organization', 'world health organisation'],
    drink(10, 'published', ['intake_table', 'kalinowski_2016']),
    guidance([], ['no_safe_level'], 'published', ['who_2023']),
  ),
  country('portugal', ['portugal', 'pt', 'prt', 'portogallo'], drink(10, 'memory', ['memory']), null),
  country(
    'netherlands',
    ['netherlands', 'nl', 'nld', 'holland', 'the netherlands', 'paesi bassi', 'olanda'],
    drink(10, 'memory', ['memory']),
    null,
  ),
  unsized('belgium', 'belgium', 'be', 'bel', 'belgio'),
  country('norway', ['norway', 'no', 'nor', 'norvegia'], drink(12, 'memory', ['memory']), null),
  country('finland', ['finland', 'fi', 'fin', 'finlandia', 'suomi'], drink(12, 'memory', ['memory']), null),
  unsized('south_korea', 'south korea', 'kr', 'kor', 'korea', 'corea del sud', 'corea'),
  unsized('brazil', 'brazil', 'br', 'bra', 'brasile', 'brasil'),
  unsized('south_africa', 'south africa', 'za', 'zaf', 'sudafrica', 'sud africa'),
]
