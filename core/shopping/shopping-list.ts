import { kindOfDrink } from '../botanical/drink/drink-said.ts'
import { nameKey } from '../jar/entry/jar-name.ts'
import { isJuice, USUAL_MATERIAL } from '../quantity/materials.ts'
import { less, potsOf, using } from './at-hand.ts'
import type { Have } from './have.ts'
import type { Needs, PlantNeed, SpiritNeed, SweetenerNeed, VesselNeed } from './needs.ts'
import { bagsBought, bottlesBought, countBought, massBoughtG, type Sold } from './sold.ts'

/** What is bought of a thing; 0 where there is enough of it at hand. */
export interface PlantToBuy extends PlantNeed {
  readonly buyCount: number | null
  readonly buyG: number
}

export interface SpiritToBuy extends SpiritNeed {
  readonly toBuyMl: number
  readonly count: number
  readonly sizeMl: number
}

export interface SweetenerToBuy extends SweetenerNeed {
  readonly buyG: number
  /** Bags of white sugar; null of what is weighed. */
  readonly bags: number | null
}

export interface VesselsToBuy extends VesselNeed {
  readonly buyCount: number
}

/** All that is to be bought, each thing once, exactly what it takes beside what a shop sells of it. */
export interface ShoppingList {
  readonly plants: readonly PlantToBuy[]
  readonly spirits: readonly SpiritToBuy[]
  readonly sweeteners: readonly SweetenerToBuy[]
  readonly bottles: readonly VesselsToBuy[]
  readonly jars: readonly VesselsToBuy[]
  readonly isClothWanted: boolean
  readonly isPaperWanted: boolean
  /** What is at hand and nothing takes, as typed. */
  readonly notNeeded: readonly string[]
}

const plantKey = ({ id, name, isDried }: Pick<PlantNeed, 'id' | 'name' | 'isDried'>): string =>
  `${id ?? nameKey(name)} ${isDried}`

/** Items of one kind together, in the order in which the first of each comes. */
function grouped<Item>(items: readonly Item[], keyOf: (item: Item) => string): readonly (readonly Item[])[] {
  const groups = new Map<string, Item[]>()
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item])
  return [...groups.values()]
}

const sumOf = <Item>(items: readonly Item[], amount: (item: Item) => number): number =>
  items.reduce((sum, item) => sum + amount(item), 0)

/** Counted where all of it is counted alike, else weighed. */
function plantsTogether(same: readonly PlantNeed[]): PlantNeed {
  const first = same[0]!
  const isCounted = same.every(({ count, unit }) => count !== null && unit === first.unit)
  return {
    ...first,
    massG: sumOf(same, ({ massG }) => massG),
    count: isCounted ? sumOf(same, ({ count }) => count!) : null,
    unit: isCounted ? first.unit : null,
    ofZest: first.ofZest && isCounted,
  }
}

type PlantAtHand = Extract<Have, { kind: 'plant' }>['plant']

/** The share of what is needed that is at hand, 0 to 1: by pieces where both are counted alike, else by weight. */
function shareOfPlant(need: PlantNeed, have: PlantAtHand): number {
  if (have.massG === null) return 1
  if (need.count !== null && have.count !== null && have.unit === need.unit) return have.count / need.count
  return have.massG / need.massG
}

function plantToBuy(need: PlantNeed, have: readonly PlantAtHand[]): PlantToBuy {
  const left = 1 - sumOf(have, (each) => shareOfPlant(need, each))
  const isEnough = left <= NOTHING_SHARE
  const buyCount = need.count === null ? null : isEnough ? 0 : countBought(left * need.count)
  return { ...need, buyCount, buyG: isEnough ? 0 : massBoughtG(left * need.massG) }
}

/** So small a part of what is needed is rounding. */
const NOTHING_SHARE = 1e-6

/** Strengths that are one spirit in a shop, % vol apart; two labels say 95 and 96 of the same bottle. Judgement. */
const SAME_PERCENT = 1
const SAME_GPERL = 1

/** Spirit of which nobody said more may be any. */
const isSameDrink = ({ drink: one }: SpiritNeed, { drink: other }: SpiritNeed): boolean =>
  one === null || other === null || kindOfDrink(one) === kindOfDrink(other)

const isSameSpirit = (one: SpiritNeed, other: SpiritNeed, apart: number): boolean =>
  Math.abs(one.abvPercent - other.abvPercent) <= apart + NOTHING_SHARE &&
  Math.abs(one.sugarGPerL - other.sugarGPerL) <= SAME_GPERL

/** One label's strength: tenths, as a label has them. */
const LABEL_PERCENT = 0.05

function spiritsTogether(spirits: readonly SpiritNeed[]): readonly SpiritNeed[] {
  const groups: SpiritNeed[][] = []
  for (const spirit of spirits) {
    const group = groups.find(([first]) => first!.drink === spirit.drink && isSameSpirit(first!, spirit, LABEL_PERCENT))
    if (group === undefined) groups.push([spirit])
    else group.push(spirit)
  }
  return groups
    .map((same) => ({ ...same[0]!, volumeMl: sumOf(same, ({ volumeMl }) => volumeMl) }))
    .toSorted((one, other) => other.abvPercent - one.abvPercent)
}

const isSameSize = (one: number, other: number | null): boolean => other === null || Math.abs(one - other) < 0.5

const sizesTogether = (vessels: readonly VesselNeed[]): readonly VesselNeed[] =>
  grouped(vessels, ({ volumeMl }) => volumeMl.toFixed(0))
    .map((same) => ({ volumeMl: same[0]!.volumeMl, count: sumOf(same, ({ count }) => count) }))
    .toSorted((one, other) => other.volumeMl - one.volumeMl)

/** A jar at hand does where it holds as much, and not so much more that half of it is air. Common practice, no source. */
const doesForJar = (wantedMl: number, haveMl: number | null): boolean =>
  haveMl === null || (haveMl >= 0.99 * wantedMl && haveMl <= 2 * wantedMl)

const sweetenerToBuy = (need: SweetenerNeed, leftG: number, { sugarG }: Sold): SweetenerToBuy => {
  const isWhite = need.material === USUAL_MATERIAL
  if (leftG <= NOTHING_SHARE * need.massG) return { ...need, buyG: 0, bags: isWhite ? 0 : null }
  if (!isWhite) return { ...need, buyG: massBoughtG(leftG), bags: null }
  const bags = bagsBought(leftG, sugarG)
  return { ...need, buyG: bags * sugarG, bags }
}

/** One list of all that these take: each thing once, what is at hand taken off, rounded up to what a shop sells. */
export function shoppingList(all: readonly Needs[], have: readonly Have[], sold: Sold): ShoppingList {
  const plantPots = potsOf(have, 'plant', () => 0)
  const spiritPots = potsOf(have, 'spirit', ({ spirit }) => spirit.volumeMl)
  const sweetPots = potsOf(have, 'sweetener', ({ sweetener }) => sweetener.massG)
  const bottlePots = potsOf(have, 'bottles', ({ vessels }) => vessels.count)
  const jarPots = potsOf(have, 'jars', ({ vessels }) => vessels.count)
  const [isStrained, isFiltered] = [all.some(({ isToStrain }) => isToStrain), all.some(({ isToFilter }) => isToFilter)]
  const of = (kind: Have['kind']) => have.filter((each) => each.kind === kind)

  const plants = grouped(
    all.flatMap((each) => each.plants),
    plantKey,
  )
    .map(plantsTogether)
    .map((need) => {
      const fitting = using(plantPots, ({ plant }) => plantKey(plant) === plantKey(need))
      return plantToBuy(
        need,
        fitting.map((pot) => pot.have.plant),
      )
    })
  const spirits = spiritsTogether(all.flatMap((each) => each.spirits)).map((need) => {
    const pots = using(
      spiritPots,
      ({ spirit }) => isSameDrink(spirit, need) && isSameSpirit(spirit, need, SAME_PERCENT),
    )
    const toBuyMl = less(need.volumeMl, pots)
    const isEnough = toBuyMl <= NOTHING_SHARE * need.volumeMl
    return { ...need, toBuyMl, ...(isEnough ? { count: 0, sizeMl: 0 } : bottlesBought(toBuyMl, sold.spiritMl)) }
  })
  const sweeteners = grouped(
    all.flatMap((each) => each.sweeteners),
    ({ material }) => material,
  ).map((same) => {
    const need = { material: same[0]!.material, massG: sumOf(same, ({ massG }) => massG) }
    const pots = using(sweetPots, ({ sweetener }) => sweetener.material === need.material)
    return sweetenerToBuy(need, less(need.massG, pots), sold)
  })
  const bottles = sizesTogether(all.flatMap((each) => each.bottles)).map((need) => {
    const pots = using(bottlePots, ({ vessels }) => isSameSize(need.volumeMl, vessels.volumeMl))
    return { ...need, buyCount: less(need.count, pots) }
  })
  const jars = sizesTogether(all.flatMap((each) => each.jars)).map((need) => {
    const pots = using(jarPots, ({ vessels }) => doesForJar(need.volumeMl, vessels.volumeMl))
    return { ...need, buyCount: less(need.count, pots) }
  })
  const pots = [...plantPots, ...spiritPots, ...sweetPots, ...bottlePots, ...jarPots]
  return {
    plants,
    spirits,
    sweeteners: sweeteners.toSorted((one, other) => Number(isJuice(one.material)) - Number(isJuice(other.material))),
    bottles,
    jars,
    isClothWanted: isStrained && of('cloth').length === 0,
    isPaperWanted: isFiltered && of('paper').length === 0,
    notNeeded: [
      ...pots.filter(({ isUsed }) => !isUsed).map((pot) => pot.have),
      ...(isStrained ? [] : of('cloth')),
      ...(isFiltered ? [] : of('paper')),
    ].map(({ typed }) => typed),
  }
}
