import { commands } from '../test-desk.ts'

/** An amount in units of the other kitchen. */
const METRIC = /(?<![\w.])\d[\d.,]*(?: \d{3})?[ ]?(?:ml|cl|dl|l|g|kg|g\/L|°C)(?![\w/])/g
const US = /(?:\d|[⅛¼⅓⅜½⅝⅔¾⅞]) ?(?:cups?|pints?|quarts?|gallons?|fl oz|oz|lb|°F|proof)(?!\w)/g

/** Spirit is sold so in the United States too (27 CFR 5.203), and of so little spice nobody weighs an eighth of an ounce. */
const SOLD_SO = /^(?:375|750) ml$|^1(?:\.75)? l$/
const SPICE_G = 3.6

export interface Story {
  readonly name: string
  readonly foreign: RegExp
  readonly lines: readonly (readonly [day: number, line: string])[]
  readonly isFine: (amount: string, line: string) => boolean
}

const isFineInUs = (amount: string, line: string): boolean => {
  const value = Number.parseFloat(amount)
  if (/^\/(?:help )?shopping/.test(line) && SOLD_SO.test(amount)) return true
  // A standard drink is told in grams of alcohol there too (14 g; NIAAA).
  if (line.startsWith('/serving') && amount.endsWith(' g')) return true
  return / ?g$/.test(amount) && value < SPICE_G
}

const SEASON = (of: { quart: string; strained: string; sugar: string; water: string; bottles: string; pour: string }) =>
  [
    [0, `/plan of:10 lemons spirit:${of.quart}`],
    [0, `/plan of:lemon spirit:${of.quart} to-sweetness:sweet`],
    [0, `/jar start lemon of:10 lemons spirit:${of.quart}`],
    [0, `/jar start sloe of:${of.sugar} sloes spirit:${of.quart}`],
    [0, '/jar start'],
    [0, '/settings'],
    [0, '/plan of:lemon'],
    [0, '/plan of:lemon bottles:6'],
    [0, '/jar list'],
    [0, '/jar show lemon'],
    [0, '/shopping'],
    [0, '/cost'],
    [0, '/cost lemon'],
    [0, '/jar tag lemon'],
    [0, '/reminders'],
    [2, '/jar shake all'],
    [8, '/jar list'],
    [8, '/jar taste lemon'],
    [8, '/jar taste lemon rating:2 note:too weak'],
    [20, '/trouble cloudy jar:lemon'],
    [20, '/jar strain lemon'],
    [20, '/jar sweeten lemon'],
    [20, '/jar bottle lemon'],
    [20, '/jar undo lemon'],
    [20, `/jar strain lemon measured:${of.strained}`],
    [20, '/jar show lemon'],
    [20, '/jar list'],
    [20, '/syrup jar:lemon'],
    [20, '/syrup jar:lemon to-sweetness:dry'],
    [20, '/measure lemon'],
    [20, '/jar filter lemon'],
    [21, `/jar sweeten lemon sugar:${of.sugar} water:${of.water}`],
    [21, '/trouble too sweet jar:lemon'],
    [21, '/adjust jar:lemon to-strength:24%'],
    [21, '/jar list'],
    [24, '/jar bottle lemon'],
    [24, `/jar bottle lemon bottles:${of.bottles}`],
    [24, '/jar label lemon'],
    [24, '/label strength:30%'],
    [70, '/jar list'],
    [70, '/bottles'],
    [70, '/jar open lemon'],
    [70, '/jar taste lemon rating:2 note:too sweet'],
    [70, '/again lemon'],
    [70, '/again lemon spirit:2 x 700'],
    [70, '/jar show lemon'],
    [70, '/notebook'],
    [70, '/keeping of:lemon'],
    [70, '/botanical lemon'],
    [70, '/botanical sloe'],
    [70, `/serving pour:${of.pour} strength:30% country:US`],
    [70, '/stir it'],
    [70, '/jar strain sloe'],
    [70, '/jar sweeten sloe'],
    [70, '/help'],
    [70, '/help units'],
    [70, '/help sugar'],
    [70, '/help filter'],
    ...commands.map(({ path }) => [71, `/${path}`] as const).filter(([, line]) => line !== '/forget'),
    ...commands.map(({ path }) => [71, `/help ${path}`] as const),
  ] as const

const US_AMOUNTS = {
  quart: '1 quart 151 proof',
  strained: '3 1/2 cups',
  sugar: '1 lb',
  water: '3 cups',
  bottles: '3 x 12 fl oz',
  pour: '1 fl oz',
}

export const STORIES: readonly Story[] = [
  { name: 'begun in US units', foreign: METRIC, lines: SEASON(US_AMOUNTS), isFine: isFineInUs },
  {
    name: 'in US units, chosen for everything',
    foreign: METRIC,
    lines: [[0, '/settings units:us'], ...SEASON({ ...US_AMOUNTS, quart: '1 quart vodka 40%' })],
    isFine: isFineInUs,
  },
  {
    name: 'begun in metric units',
    foreign: US,
    lines: SEASON({
      quart: '1 l 70%',
      strained: '900 ml',
      sugar: '500 g',
      water: '700 ml',
      bottles: '3 x 350 ml',
      pour: '30 ml',
    }),
    // What may be typed is told to everybody.
    isFine: (_, line) => line.startsWith('/help'),
  },
]
