import { botanicalById } from '../botanical/catalogue/catalogue.ts'
import { type OverCeiling, overCeilings } from '../botanical/ceilings.ts'
import { ethanolG, mix, volumeMl, water } from '../liquid/liquid.ts'
import { exactly } from '../quantity/measured.ts'
import { plantOf } from '../recipe/plan/plant-of.ts'
import { liquidOf } from '../recipe/portion.ts'
import { valuesOf } from '../recipe/propagate.ts'
import { inputsOf, steepLiquids } from '../recipe/steep.ts'
import { liquidHolding } from '../recipe/targets.ts'
import { type SpiritToAdd, spiritToAdd, withSpirit } from './spirit-to-add.ts'
import { isCatalogued } from './steps.ts'
import type { Story } from './story.ts'
import { plantsOfStart } from './to-add.ts'

/** A jar that holds more of something than is safe. */
export interface OverInJar {
  /** The worst first. */
  readonly over: readonly OverCeiling[]
  /** With so much spirit it is within; null where that is no way. */
  readonly add: SpiritToAdd | null
}

/** The limits that are passed by all that went into a jar together, by what it was planned to become. */
function limitsPassed(story: Story): { readonly over: readonly OverCeiling[]; readonly pouredMl: number } {
  const parts = story.happened.filter((entry) => entry.kind === 'started' || entry.kind === 'added')
  const spirits = parts.flatMap((entry) => entry.spirits)
  const waterG = parts.reduce((sum, entry) => sum + entry.waterG.value, 0)
  const sugarG = parts.reduce((sum, entry) => sum + entry.sugarG.value, 0)
  const byId = new Map<string, number>()
  for (const { id, massG } of parts.flatMap((entry) =>
    entry.kind === 'started' ? plantsOfStart(story) : entry.plants,
  )) {
    if (id !== null && isCatalogued(id)) byId.set(id, (byId.get(id) ?? 0) + massG.value)
  }
  const weighed = [...byId].map(([id, massG]) => ({ botanical: botanicalById(id), massG }))
  const pouredMl = volumeMl(mix(...valuesOf(spirits).map(liquidOf), water(waterG)))
  const plants = weighed.map(({ botanical, massG }) => plantOf(botanical, exactly(massG)))
  const steeping = { spirits, waterG: exactly(waterG), sugarG: exactly(sugarG), plants }
  const { infusion } = steepLiquids(valuesOf(inputsOf(steeping)))
  const { targets } = story.started.plan
  const finishedMl = targets === null || ethanolG(infusion) === 0 ? null : finishedOf(ethanolG(infusion), targets)
  return { over: overCeilings(weighed, pouredMl, finishedMl), pouredMl }
}

const finishedOf = (holdsG: number, targets: Parameters<typeof liquidHolding>[1]): number =>
  volumeMl(liquidHolding(holdsG, targets))

/** Null where every limit is kept. */
export function overInJar(story: Story): OverInJar | null {
  const { over, pouredMl } = limitsPassed(story)
  if (over.length === 0) return null
  const isWithin = (add: SpiritToAdd): boolean => limitsPassed(withSpirit(story, add)).over.length === 0
  return { over, add: spiritToAdd(story, pouredMl, isWithin) }
}
