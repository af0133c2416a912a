import fc from 'fast-check'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { isJuice, materialIds, USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { drinkNumbers } from '../../../core/recipe/code/drink-numbers.ts'
import { RANGES, type Recipe, type RecipePlant } from '../../../core/recipe/code/recipe.ts'

const whole = ([min, max]: readonly [number, number]) => fc.integer({ min, max })
const orNone = <T>(of: fc.Arbitrary<T>) => fc.option(of, { freq: 3 })

const kinds = catalogue.flatMap(({ id, driedPerFresh }) =>
  (driedPerFresh === null ? [false] : [false, true]).map((isDried) => ({ id, isDried })),
)

/** Plants with any amounts that can be typed at all. */
const anyPlants = fc.uniqueArray(fc.constantFrom(...kinds), { minLength: 1, maxLength: 8 }).chain((some) =>
  fc.tuple(
    ...some.map((kind) =>
      fc.record({
        id: fc.constant(kind.id),
        isDried: fc.constant(kind.isDried),
        massMg: whole(RANGES.massMg),
        countTenths: orNone(whole(RANGES.countTenths)),
        addOnDays: whole(RANGES.addOnDays),
      }),
    ),
  ),
)

const others = materialIds.filter((id) => id !== USUAL_MATERIAL)

/** What sweetens beside white sugar, in what a second version tells of it. */
const anySugars: fc.Arbitrary<Pick<Recipe, 'sweetenings' | 'sweetener' | 'filler'>> = fc
  .record({
    sweetenings: fc
      .uniqueArray(fc.constantFrom(...others), { maxLength: 4 })
      .chain((all) =>
        fc.tuple(
          ...all.map((material) => whole(RANGES.sweeteningTenthG).map((massTenthG) => ({ material, massTenthG }))),
        ),
      ),
    sweetener: fc.constantFrom(...materialIds.filter((id) => !isJuice(id))),
    filler: orNone(fc.constantFrom(...materialIds.filter(isJuice))),
  })
  .map(({ sweetenings, sweetener, filler }) => ({
    ...(sweetenings.length > 0 && { sweetenings }),
    ...(sweetener !== USUAL_MATERIAL && { sweetener }),
    ...(filler !== null && { filler }),
  }))

/** Every number anywhere in its range, its ends too. */
export const anyRecipe: fc.Arbitrary<Recipe> = fc
  .record({
    plants: anyPlants,
    spirits: fc.array(
      fc.record(
        {
          volumeTenthMl: whole(RANGES.volumeTenthMl),
          abvHundredthPercent: whole(RANGES.spiritHundredthPercent),
          drink: fc.constantFrom(...drinkNumbers),
        },
        { requiredKeys: ['volumeTenthMl', 'abvHundredthPercent'] },
      ),
      { minLength: 1, maxLength: 6 },
    ),
    waterTenthG: whole(RANGES.waterTenthG),
    sugarTenthG: whole(RANGES.sugarTenthG),
    sugars: fc.oneof({ arbitrary: fc.constant({}), weight: 2 }, anySugars),
    targets: orNone(
      fc.record({
        abvHundredthPercent: whole(RANGES.abvHundredthPercent),
        sugarTenthGPerL: whole(RANGES.sugarTenthGPerL),
      }),
    ),
    steep: orNone(
      fc
        .tuple(whole(RANGES.days), whole(RANGES.days))
        .map(([one, other]) => ({ fromDays: Math.min(one, other), byDays: Math.max(one, other) })),
    ),
    restDays: orNone(whole(RANGES.days)),
  })
  .map(({ sugars, ...recipe }) => ({ ...recipe, ...sugars }))

const share = fc.double({ min: 0.1, max: 1, noNaN: true })

/** Of the catalogue's own strengths and within its usual doses, so that most can be planned. */
export const usualRecipe: fc.Arbitrary<Recipe> = fc
  .record({
    kinds: fc.uniqueArray(fc.constantFrom(...catalogue), { minLength: 1, maxLength: 8 }),
    dose: share,
    litres: fc.double({ min: 0.2, max: 5, noNaN: true }),
    strengths: fc.array(fc.integer({ min: 4000, max: 9600 }), { minLength: 1, maxLength: 3 }),
    sugarTenthG: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 2000 })),
    targets: orNone(
      fc.record({
        abvHundredthPercent: fc.integer({ min: 1500, max: 3500 }),
        sugarTenthGPerL: fc.integer({ min: 0, max: 3000 }),
      }),
    ),
    days: orNone(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 30 }))),
    rest: orNone(fc.integer({ min: 0, max: 200 })),
  })
  .map(({ kinds: plants, dose, litres, strengths, sugarTenthG, targets, days, rest }) => ({
    plants: plants.map(
      ({ id, dose: { typicalGPerL } }, index): RecipePlant => ({
        id,
        isDried: false,
        massMg: Math.max(1, Math.floor((dose * typicalGPerL * litres * 1000) / plants.length)),
        countTenths: index === 0 ? 45 : null,
        addOnDays: index === 1 && days !== null ? 1 : 0,
      }),
    ),
    spirits: strengths.map((abvHundredthPercent) => ({
      volumeTenthMl: Math.ceil((litres * 10_000) / strengths.length),
      abvHundredthPercent,
    })),
    waterTenthG: 0,
    sugarTenthG,
    targets,
    steep: days === null ? null : { fromDays: days[0], byDays: days[0] + days[1] },
    restDays: rest,
  }))

/** 10 lemons in a litre of 95 % vol, strained on the 20th day, made 30 % vol and 250 g/L. */
export const LEMON: Recipe = {
  plants: [{ id: 'lemon_peel', isDried: false, massMg: 105_000, countTenths: 100, addOnDays: 0 }],
  spirits: [{ volumeTenthMl: 10_000, abvHundredthPercent: 9500 }],
  waterTenthG: 0,
  sugarTenthG: 0,
  targets: { abvHundredthPercent: 3000, sugarTenthGPerL: 2500 },
  steep: { fromDays: 20, byDays: 20 },
  restDays: 30,
}
