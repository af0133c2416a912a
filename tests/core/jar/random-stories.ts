import fc from 'fast-check'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import type { Happening, Ingredients, PlantIn, ReadAmount, ReadStrength } from '../../../core/jar/entry/entry.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Portion } from '../../../core/recipe/portion.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { on, started } from './jars.ts'

const numberIn = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const measured = (max: number): fc.Arbitrary<Measured> =>
  fc.record({
    // No scale and no jug tells less; what is read is 0.01 g at least.
    value: fc.oneof(fc.constant(0), numberIn(1e-6, max)),
    plusMinus: fc.oneof(fc.constant(0), numberIn(0, max / 10)),
  })

const celsius = fc.oneof(fc.constant(20), numberIn(-30, 100))

const portion: fc.Arbitrary<Portion> = fc.record({
  amount: measured(3000),
  by: fc.constantFrom('volume', 'mass'),
  atC: celsius,
  abvPercent: measured(100),
  abvAtC: fc.oneof(fc.constant(null), celsius),
  readsProof: fc.boolean(),
  sugarGPerL: fc.oneof(fc.constant({ value: 0, plusMinus: 0 }), measured(400)),
})

const plant: fc.Arbitrary<PlantIn> = fc.record({
  id: fc.oneof(fc.constant(null), fc.constantFrom('gone', ...catalogue.map(({ id }) => id))),
  name: fc.constantFrom('meadow tips', 'spruce'),
  massG: measured(800),
  isDried: fc.boolean(),
  count: fc.constant(null),
  isUsual: fc.boolean(),
  words: fc.constant(null),
  addOn: fc.oneof(fc.constant(null), fc.constantFrom('2026-11-03', '2026-11-09')),
})

const ingredients: fc.Arbitrary<Ingredients> = fc.record({
  plants: fc.array(plant, { maxLength: 3 }),
  spirits: fc.array(portion, { maxLength: 2 }),
  waterG: measured(1000),
  sweetenings: measured(500).map(whiteSugar),
})

const readAmount: fc.Arbitrary<ReadAmount> = fc.record({
  amount: measured(2500),
  by: fc.constantFrom('volume', 'mass'),
  atC: celsius,
})

const readStrength: fc.Arbitrary<ReadStrength> = fc.record({
  abvPercent: measured(100),
  abvAtC: fc.oneof(fc.constant(null), celsius),
  readsProof: fc.boolean(),
})

const orNone = <T>(of: fc.Arbitrary<T>) => fc.oneof(fc.constant(null), of)

export const happening: fc.Arbitrary<Happening> = fc.oneof(
  ingredients.map((of): Happening => started(of)),
  fc.constant<Happening>({ kind: 'shaken' }),
  fc.record({
    kind: fc.constant('tasted' as const),
    rating: orNone(fc.integer({ min: 1, max: 5 })),
    note: orNone(fc.string()),
  }),
  ingredients.map((of): Happening => ({ kind: 'added', ...of })),
  ingredients.map((of): Happening => ({ kind: 'added', ...of, plants: [], as: 'top_up' })),
  ingredients.map((of): Happening => ({ kind: 'added', ...of, as: 'layer', enzyme: '1 tsp' })),
  fc.record({
    kind: fc.constant('strained' as const),
    measured: orNone(readAmount),
    strength: orNone(readStrength),
    rinseWaterG: measured(300),
  }),
  fc.record({
    kind: fc.constant('filtered' as const),
    measured: orNone(readAmount),
    isRacked: fc.boolean(),
    fining: fc.constantFrom('bentonite' as const, 'egg_white' as const),
  }),
  fc.record({
    kind: fc.constant('sweetened' as const),
    waterG: measured(1000),
    sweetenings: measured(800).map(whiteSugar),
  }),
  measured(300).map((massG): Happening => ({ kind: 'fruit_sugared', sweetenings: whiteSugar(massG) })),
  orNone(readAmount).map(
    (read): Happening => ({
      kind: 'sweetened',
      waterG: { value: 0, plusMinus: 0 },
      sweetenings: [],
      ofFruit: { measured: read },
    }),
  ),
  fc.constant<Happening>({
    kind: 'taken_out',
    plants: [{ id: 'clove', name: 'clove', massG: { value: 2, plusMinus: 0.1 } }],
  }),
  fc
    .oneof(fc.constant(0), numberIn(0.001, 1))
    .map((value): Happening => ({ kind: 'parted', kept: { value, plusMinus: 0.01 }, other: 'sun', isNew: false })),
  fc.constant<Happening>({
    kind: 'poured_in',
    liquid: {
      amount: { value: 300, plusMinus: 6 },
      by: 'volume',
      atC: 20,
      abvPercent: { value: 40, plusMinus: 1 },
      abvAtC: null,
      sugarGPerL: { value: 120, plusMinus: 5 },
    },
    plants: [],
    spiritMl: 200,
    other: 'sun',
    into: null,
  }),
  fc.constant<Happening>({ kind: 'noted', note: 'clear', where: 'cellar', vessel: null }),
  fc.constant<Happening>({ kind: 'bottled', bottles: [{ count: 3, volumeMl: 500 }] }),
  fc.constant<Happening>({ kind: 'opened' }),
  fc.constant<Happening>({ kind: 'emptied' }),
  fc.constant<Happening>({ kind: 'discarded' }),
  fc.constantFrom<Happening>({ kind: 'renamed', name: 'sun' }, { kind: 'renamed', name: '檸檬' }),
  fc.constantFrom<Happening>(
    { kind: 'put_off', untilDay: '2026-12-01', untilMs: null },
    { kind: 'put_off', untilDay: '2026-12-01', untilMs: Date.UTC(2026, 11, 1, 18) },
  ),
  fc.constant<Happening>({ kind: 'bottles_out', use: 'given', bottles: [{ count: 1, volumeMl: 500 }] }),
)

const moment = fc.tuple(fc.integer({ min: -1, max: 12 }), fc.integer({ min: 0, max: 3 })).map(([day, m]) => on(day, m))

/** What a maker may try; a step that is refused changes nothing. */
export type Try =
  | { readonly do: 'record'; readonly happening: Happening; readonly moment: ReturnType<typeof on> }
  | {
      readonly do: 'correct'
      readonly seq: number
      readonly by: Happening
      readonly moved: ReturnType<typeof on> | null
    }
  | { readonly do: 'undo' }

const attempt: fc.Arbitrary<Try> = fc.oneof(
  { weight: 6, arbitrary: fc.record({ do: fc.constant('record' as const), happening, moment }) },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('correct' as const),
      seq: fc.integer({ min: 1, max: 12 }),
      by: happening,
      moved: orNone(moment),
    }),
  },
  { weight: 1, arbitrary: fc.constant<Try>({ do: 'undo' }) },
)

/** A usual batch to begin with, most of the time, so that later steps are not all refused. */
const usual: readonly Try[] = [
  { do: 'record', happening: started(), moment: on(0) },
  {
    do: 'record',
    happening: { kind: 'strained', measured: null, strength: null, rinseWaterG: { value: 50, plusMinus: 1 } },
    moment: on(5),
  },
  { do: 'record', happening: { kind: 'bottled', bottles: [{ count: 3, volumeMl: 200 }] }, moment: on(6) },
]

export const tries: fc.Arbitrary<readonly Try[]> = fc
  .tuple(fc.constantFrom(0, 1, 2, 2, 2, 3), fc.array(attempt, { minLength: 4, maxLength: 14 }))
  .map(([begun, rest]) => [...usual.slice(0, begun), ...rest])
