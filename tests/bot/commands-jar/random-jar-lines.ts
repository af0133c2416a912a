import fc from 'fast-check'
import { commands } from '../test-desk.ts'

const NAMES = ['lemon', 'ginger', 'لیمو', 'lem', '#abcde', 'all', 'jar', 'water mint', 'x: y', '🍋', '']

/** Values that an option takes, at their ends and in the middle. */
const VALUES: Readonly<Record<string, readonly string[]>> = {
  name: NAMES,
  to: NAMES,
  jar: NAMES,
  of: [
    'lemon',
    '8 lemons + 30 g ginger',
    '20 g ginger',
    '1 stick cinnamon',
    'nutmeg',
    '5 kg ginger',
    '20 g jaboticaba',
  ],
  spirit: ['1 l 95%', '700 ml', '1 l 40%', '0.1 ml 96%', '1000 l 60%', '500 ml 75.5% + 300 ml 40%', '750 g 95%'],
  strength: ['78%', '95', '30%', '0.1%', '100%', '77% at 28 C', '150 proof', '78±40%'],
  'to-strength': ['30%', '25', '60%', '95%', '0.1%'],
  'to-sweetness': ['250 g/L', 'dry', 'rich', '0 g/L', '1200 g/L'],
  'steep-at': ['60%', '40%', '95%'],
  bottles: ['4 x 500 ml', '500 ml', '3', '10000 x 1000 l', '1 x 250 ml + 2 x 500 ml', '1000 l'],
  measured: ['920 ml', '770 g', '0.1 ml', '1000 l', '2 cups', '930±5 ml', '900 ml at 28 C', '700 ml'],
  rinse: ['100 ml', '1 l', '50 g', '1000 l'],
  water: ['750 ml', '1 l', '0.1 ml', '1000 l', '500 g', '2 cups'],
  sugar: ['560 g', '0.01 g', '1000 kg', '2 cups', '50 g'],
  rating: ['1', '5', '3/5', '★★', '0', '6'],
  note: ['fine', '“quoted”', 'a:b c', '\u202e', 'x'.repeat(1001)],
  entry: ['1', '2', '3', '99', '#4', '0'],
  when: [
    'today',
    'yesterday',
    '3 days ago',
    '24 December',
    '29 February',
    '2026-11-01',
    'tomorrow',
    '20 years ago',
    '3/4',
  ],
  until: ['tomorrow', 'in 2 weeks', '24 December', 'yesterday', '2199-12-31', '3/4'],
  'ready-by': ['24 December', 'tomorrow', 'in 6 months', '3/4'],
  'unknown-ok': ['yes', 'no'],
  days: ['10 days', '6 hours', '20 years'],
  ratio: ['1:1', '2:1', '0.01'],
  'at-most': ['2 l', '0.1 ml'],
  picture: ['yes', 'no', 'perhaps'],
}

const ODD = ['', '±', 'NaN', '-3 ml', '9'.repeat(300), '+', '""', '"', ':', '🍋', '\u0000']

const jarCommands = commands.filter(({ path }) => path.startsWith('jar '))

const optionOf = (name: string) => ({
  arbitrary: fc.constantFrom(...(VALUES[name] ?? ['1'])).map((value) => `${name}:${value}`),
  weight: 20,
})

/** A step with some of its options, most with a value that fits, some not. */
export const stepLine = fc.constantFrom(...jarCommands).chain(({ path, input }) => {
  const [first = 'jar', ...others] = Object.keys(input.shape)
  const jar = fc.oneof(
    { arbitrary: fc.constant('lemon'), weight: 8 },
    { arbitrary: fc.constant('ginger'), weight: 3 },
    { arbitrary: fc.constantFrom(...VALUES[first]!), weight: 2 },
  )
  const options = others.map((name) =>
    fc.option(
      fc.oneof(optionOf(name), { arbitrary: fc.constantFrom(...ODD).map((value) => `${name}:${value}`), weight: 1 }),
      // A note takes the rest of the line, so it is typed last.
      { nil: '', freq: 1 },
    ),
  )
  return fc
    .tuple(jar, fc.tuple(...options))
    .map(([named, given]) => [`/${path} ${named}`, ...given.filter((each) => each !== '')].join(' '))
})

/** The steps that go on with a batch, so that the late ones are reached too. */
export const fittingLine = fc.constantFrom(
  '/jar shake all',
  '/jar taste lemon rating:4 note:bright',
  '/jar add lemon of:5 g ginger',
  '/jar add lemon spirit:100 ml 40%',
  '/jar strain lemon measured:900 ml strength:75%',
  '/jar strain lemon rinse:100 ml',
  '/jar sweeten lemon water:500 ml sugar:400 g',
  '/jar sweeten lemon sugar:2 cups when:yesterday',
  '/jar filter lemon measured:1 l',
  '/jar bottle lemon bottles:500 ml',
  '/jar open lemon',
  '/jar correct lemon measured:880 ml',
  '/jar correct lemon when:2 days ago',
  '/jar correct lemon entry:1 when:40 days ago',
  '/jar undo lemon',
  '/jar undo lemon',
  '/jar later all until:in 2 weeks',
  '/jar later lemon until:18:00',
  '/jar later all until:3 hours',
  '/syrup jar:lemon',
  '/jar empty lemon',
)
