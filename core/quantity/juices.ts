import type { Material } from './material.ts'

/** A jug, and how thick a juice is. Common practice, no source. */
const JUG_SHARE = 0.03

interface Juice {
  readonly names: readonly string[]
  readonly kinds?: string
  readonly gPerMl: number
  readonly water: number
  readonly sucrose: number
  readonly glucoseAndFructose: number
  readonly acid: number
  readonly sugarsPlusMinusG: number
}

const juice = ({
  names,
  kinds = '',
  gPerMl,
  water,
  sucrose,
  glucoseAndFructose,
  acid,
  sugarsPlusMinusG,
}: Juice): Material => ({
  names,
  kinds,
  isSyrup: true,
  isJuice: true,
  pouredGPerMl: gPerMl,
  pouredPlusMinusShare: JUG_SHARE,
  per100G: { water, sucrose, glucoseAndFructose, longer: 0 },
  acidPer100G: acid,
  sugarsPlusMinusG,
  sweetness: { usual: 1, low: 1, high: 1 },
  trust: 'memory',
  source: 'from memory, as in the tables of USDA SR',
})

const PRESSED = 'fresh freshly squeezed pressed cloudy clear unsweetened bottled strained pure'

/** What stands for the water of a syrup: it brings sugars, acid and gums of its own. */
export const juices = {
  orange_juice: juice({
    names: ['orange juice', 'succo arancia', 'succo arance'],
    kinds: PRESSED,
    gPerMl: 1.045,
    water: 88.3,
    sucrose: 4,
    glucoseAndFructose: 4.4,
    acid: 1,
    sugarsPlusMinusG: 1.5,
  }),
  apple_juice: juice({
    names: ['apple juice', 'succo mela', 'succo mele'],
    kinds: PRESSED,
    gPerMl: 1.047,
    water: 88.2,
    sucrose: 1.3,
    glucoseAndFructose: 8.3,
    acid: 0.5,
    sugarsPlusMinusG: 1.5,
  }),
  grape_juice: juice({
    names: ['grape juice', 'succo uva', 'mosto'],
    kinds: `${PRESSED} red white`,
    gPerMl: 1.062,
    water: 84.5,
    sucrose: 0,
    glucoseAndFructose: 14.2,
    acid: 0.6,
    sugarsPlusMinusG: 2.5,
  }),
  pineapple_juice: juice({
    names: ['pineapple juice', 'succo ananas'],
    kinds: PRESSED,
    gPerMl: 1.054,
    water: 86.4,
    sucrose: 5,
    glucoseAndFructose: 5,
    acid: 0.8,
    sugarsPlusMinusG: 2,
  }),
  pomegranate_juice: juice({
    names: ['pomegranate juice', 'succo melagrana', 'succo melograno'],
    kinds: PRESSED,
    gPerMl: 1.056,
    water: 86,
    sucrose: 0,
    glucoseAndFructose: 12.6,
    acid: 1,
    sugarsPlusMinusG: 2,
  }),
  lemon_juice: juice({
    names: ['lemon juice', 'succo limone', 'succo limoni'],
    kinds: PRESSED,
    gPerMl: 1.03,
    water: 92.3,
    sucrose: 0.4,
    glucoseAndFructose: 2.1,
    acid: 5,
    sugarsPlusMinusG: 0.7,
  }),
  lime_juice: juice({
    names: ['lime juice', 'succo lime'],
    kinds: PRESSED,
    gPerMl: 1.035,
    water: 90.8,
    sucrose: 0.5,
    glucoseAndFructose: 1.2,
    acid: 6,
    sugarsPlusMinusG: 0.7,
  }),
  raspberry_puree: juice({
    names: ['raspberry purée', 'raspberry puree', 'purea lamponi'],
    kinds: 'fresh unsweetened sieved smooth',
    gPerMl: 1.05,
    water: 85.8,
    sucrose: 0.2,
    glucoseAndFructose: 4.2,
    acid: 1.6,
    sugarsPlusMinusG: 1.5,
  }),
  strawberry_puree: juice({
    names: ['strawberry purée', 'strawberry puree', 'purea fragole'],
    kinds: 'fresh unsweetened sieved smooth',
    gPerMl: 1.04,
    water: 91,
    sucrose: 0.5,
    glucoseAndFructose: 4.4,
    acid: 1,
    sugarsPlusMinusG: 1.5,
  }),
  peach_puree: juice({
    names: ['peach purée', 'peach puree', 'purea pesche'],
    kinds: 'fresh unsweetened sieved smooth',
    gPerMl: 1.05,
    water: 88.9,
    sucrose: 4.8,
    glucoseAndFructose: 3.6,
    acid: 0.6,
    sugarsPlusMinusG: 1.5,
  }),
  coffee: juice({
    names: ['brewed coffee', 'caffè preparato'],
    kinds: 'strong black cold brew filter unsweetened',
    gPerMl: 1.0,
    water: 98.8,
    sucrose: 0,
    glucoseAndFructose: 0,
    acid: 0,
    sugarsPlusMinusG: 0,
  }),
  tea: juice({
    names: ['brewed tea', 'tè preparato'],
    kinds: 'strong black green herbal cold unsweetened',
    gPerMl: 1.0,
    water: 99.6,
    sucrose: 0,
    glucoseAndFructose: 0,
    acid: 0,
    sugarsPlusMinusG: 0,
  }),
  citric_acid: {
    ...juice({
      names: ['citric acid', 'acido citrico'],
      gPerMl: 0.9,
      water: 0,
      sucrose: 0,
      glucoseAndFructose: 0,
      acid: 100,
      sugarsPlusMinusG: 0,
    }),
    isSyrup: false,
    pouredPlusMinusShare: 0.1,
  },
} as const satisfies Readonly<Record<string, Material>>
