import fc from 'fast-check'

/** Texts as people type them. */
export type Texts = fc.Arbitrary<string>

export const decimal = (most: number): Texts =>
  fc.tuple(fc.integer({ min: 1, max: most }), fc.constantFrom('', '.5', '.50', '.25', '.0')).map((all) => all.join(''))

export const number = (most: number): Texts =>
  fc.oneof(decimal(most), fc.constantFrom('1/2', '1 1/2', '2 3/4', '1/3', '1 2/3', '¾', '1 000', '1.250'))

export const spread = fc.constantFrom('', '', '', '±0.5')
export const warm = fc.constantFrom('', '', ' at 28 C', ' at 82 F', ' at -5 C', ' at 14.5 C')

export const joined = (...parts: readonly Texts[]): Texts => fc.tuple(...parts).map((all) => all.join(''))

export const volume = fc.oneof(
  joined(
    number(999),
    spread,
    fc.constantFrom(' ml', ' cl', ' dl', ' tbsp', ' cups', ' us pints', ' imp fl oz', ' cc', ' imp gill', ' au tbsp'),
    warm,
  ),
  joined(decimal(99), fc.constantFrom(' l', ' us gallons', ' quarts', ' imp pints'), warm),
  fc.constantFrom('1 cup 2 tbsp', '2 l 250 ml', '1 quart 1 1/2 cups'),
)
export const mass = fc.oneof(
  joined(number(999), spread, fc.constantFrom(' g', ' hg', ' kg', ' lb', ' oz weight')),
  fc.constantFrom('1 lb 4 oz', '2 kg 250 g', '5.000 mg', '1 lb 3 1/2 oz'),
)
export const coolVolume = volume.filter((text) => !text.includes(' at '))
export const percent = joined(
  fc.oneof(decimal(99), fc.constant('37.50')),
  spread,
  fc.constantFrom('%', '% vol', '', '°', ' proof', ' gradi', ' UK proof', '% w/w'),
)
export const strength = joined(percent, fc.constantFrom('', '', ' at 28 C', ' at 14.5 C', ' at 60 F'))
export const sweetness = fc.oneof(
  fc.constantFrom('dry', 'everyday', 'rich'),
  joined(decimal(900), spread, fc.constantFrom(' g/L', '', ' g per litre')),
  joined(decimal(90), fc.constantFrom(' g/100 ml', ' g/dl')),
)
const gravity = joined(
  fc.constantFrom('1.035', '1,094', '1.0591', '0.9498', '1.1'),
  fc.constantFrom('', '', '±0.002'),
  fc.constantFrom('', '', ' SG', ' 60/60', ' g/ml'),
  warm,
)
export const hydrometer = fc.oneof(
  gravity,
  joined(fc.constantFrom('1035', '1059.1'), fc.constantFrom('', ' kg/m3'), warm),
  joined(decimal(40), spread, fc.constantFrom(' Brix', ' Baumé', ' °Bé', '%'), warm),
)
export const several = (item: Texts, most: number): Texts =>
  fc.array(item, { minLength: 1, maxLength: most }).map((all) => all.join(' + '))

export const drink = joined(
  coolVolume,
  fc.constantFrom(' vodka', ' grappa', ' ', ' food alcohol'),
  fc.constant(' '),
  decimal(60),
  fc.constant('%'),
)
export const liqueur = joined(drink, fc.constantFrom('', ' 250 g/L', ' 10 g/dl'))

export const sweetenerName = fc.constantFrom(
  'honey',
  'miele',
  'maple syrup',
  'caster sugar',
  '1:1 syrup by weight',
  '2 to 1 syrup by cup',
  'agave',
)
export const sweetening = fc.oneof(
  mass,
  coolVolume,
  fc.constantFrom('4 oz', '450 g sugar'),
  joined(fc.oneof(mass, coolVolume), fc.constant(' '), sweetenerName),
)

export const juiceName = fc.constantFrom(
  'apple juice',
  'fresh lemon juice',
  'cold brewed coffee',
  'raspberry purée',
  'succo di mela',
)
export const pouredWater = fc.oneof(
  volume,
  mass,
  joined(volume, fc.constant(' water')),
  joined(fc.oneof(coolVolume, mass), fc.constant(' '), juiceName),
  fc.constantFrom('5 g citric acid', '1 tsp citric acid'),
)

/** A part of what there is. */
export const part = fc.oneof(
  fc.constantFrom(
    'half',
    'a third',
    'two thirds',
    '3/4',
    '2/7',
    '1 / 3',
    '½',
    'three quarters',
    'metà',
    '12.5 %',
    '100%',
  ),
  fc.integer({ min: 1, max: 100 }).map((percent) => `${percent} %`),
)
