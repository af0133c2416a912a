import { type Liquid, massG, mix, NOTHING, part, sugar, volumeMl, water } from '../../liquid/liquid.ts'
import type { Values } from '../../recipe/propagate.ts'
import type { Steeping } from '../../recipe/steep.ts'
import { sweetLiquid } from '../../recipe/sweetening.ts'
import { asRead } from './as-read.ts'
import type { LiquidStep } from './liquid-steps.ts'

/** What is in and on the plants of a jar, apart from its liquid. */
export interface InFruit {
  /** What the strained plants soaked up, as much as the balance of the jar leaves for them. */
  readonly soaked: Liquid
  /** Of the plants' own water and sugar, what had not joined the liquid. */
  readonly juice: Liquid
  /** Dry sugar on the strained plants. */
  readonly dry: Liquid
}

type Step<Kind extends LiquidStep['kind']> = Values<Extract<LiquidStep, { readonly kind: Kind }>>

export const NO_FRUIT: InFruit = { soaked: NOTHING, juice: NOTHING, dry: NOTHING }

/** A share of all of it, where a share of the jar stays. */
export const fruitPart = ({ soaked, juice, dry }: InFruit, kept: number): InFruit => ({
  soaked: part(soaked, kept),
  juice: part(juice, kept),
  dry: part(dry, kept),
})

/** Of what plants bring, what stays in them as their own. */
const ownJuice = (plants: Values<Steeping>['plants']): Liquid =>
  mix(
    ...plants.map(({ massG: plantG, waterShare, sugarShare, exchangeShare }) => {
      const stays = Math.max(0, 1 - exchangeShare)
      return mix(water(plantG * waterShare * stays), sugar(plantG * sugarShare * stays))
    }),
  )

export const withPlants = (fruit: InFruit, { plants }: Pick<Values<Steeping>, 'plants'>): InFruit => ({
  ...fruit,
  juice: mix(fruit.juice, ownJuice(plants)),
})

export function withoutPlants(fruit: InFruit, { plants }: Pick<Values<Steeping>, 'plants'>): InFruit {
  const juiceG = massG(fruit.juice)
  return { ...fruit, juice: part(fruit.juice, juiceG === 0 ? 0 : Math.max(0, 1 - massG(ownJuice(plants)) / juiceG)) }
}

/** So many millilitres of this mixture stayed in the plants. */
export const withSoaked = (fruit: InFruit, of: Liquid, soakedMl: number): InFruit => ({
  ...fruit,
  soaked: volumeMl(of) === 0 ? NOTHING : part(of, soakedMl / volumeMl(of)),
})

export const withDrySugar = (fruit: InFruit, { sweetenings }: Step<'fruit_sugared'>): InFruit => ({
  ...fruit,
  dry: mix(fruit.dry, sweetLiquid(sweetenings)),
})

/** All that can come of the plants, wrung out. */
export const allOf = ({ soaked, juice, dry }: InFruit): Liquid => mix(soaked, juice, dry)

/**
 * What is poured off sugared plants, and what stays in them: the sugar dissolves in what they soaked up and in some of their
 * own juice, and they keep less of that mixture than they did before. Estimated.
 */
export function drawnFrom(
  { soaked, juice, dry }: InFruit,
  { juiceShare, stayShare, measured }: Step<'fruit_drawn'>,
): { readonly drawn: Liquid; readonly left: InFruit } {
  const share = Math.min(1, Math.max(0, juiceShare))
  const mixed = mix(soaked, part(juice, share), dry)
  const mixedMl = volumeMl(mixed)
  if (mixedMl === 0) return { drawn: NOTHING, left: { soaked, juice, dry: NOTHING } }
  const staysMl = Math.min(mixedMl, Math.max(0, stayShare) * volumeMl(soaked))
  const comes = part(mixed, 1 - staysMl / mixedMl)
  const drawn = measured === null ? comes : asRead(comes, measured)
  const leftShare = Math.max(0, 1 - volumeMl(drawn) / mixedMl)
  return { drawn, left: { soaked: part(mixed, leftShare), juice: part(juice, 1 - share), dry: NOTHING } }
}
