import { botanicalById } from '../botanical/catalogue/catalogue.ts'
import { type OverCeiling, overCeilings } from '../botanical/ceilings.ts'
import { ethanolG, volumeMl } from '../liquid/liquid.ts'
import { exactly } from '../quantity/measured.ts'
import { plantOf } from '../recipe/plan/plant-of.ts'
import { valuesOf } from '../recipe/propagate.ts'
import { inputsOf, steepLiquids } from '../recipe/steep.ts'
import { liquidHolding } from '../recipe/targets.ts'
import { contentsOf } from './contents.ts'
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

/** The limits that are passed by all that went into a jar together, by what it was planned to become, the worst first. */
function limitsPassed(story: Story): readonly OverCeiling[] {
  const parts = story.happened.filter((entry) => entry.kind === 'started' || entry.kind === 'added')
  const spirits = parts.flatMap((entry) => entry.spirits)
  const waterG = parts.reduce((sum, entry) => sum + entry.waterG.value, 0)
  const sugarG = parts.reduce((sum, entry) => sum + entry.sugarG.value, 0)
  const plantsIn = parts.flatMap((entry) => (entry.kind === 'started' ? plantsOfStart(story) : entry.plants))
  const byId = new Map<string, number>()
  for (const { id, massG } of plantsIn) {
    if (id !== null && isCatalogued(id)) byId.set(id, (byId.get(id) ?? 0) + massG.value)
  }
  const weighed = [...byId].map(([id, massG]) => ({ botanical: botanicalById(id), massG }))
  const plants = weighed.map(({ botanical, massG }) => plantOf(botanical, exactly(massG)))
  const steeping = { spirits, waterG: exactly(waterG), sugarG: exactly(sugarG), plants }
  const { poured, infusion } = steepLiquids(valuesOf(inputsOf(steeping)))
  const { targets } = story.started.plan
  const holdsG = ethanolG(infusion)
  const finishedMl = targets === null || holdsG === 0 ? null : volumeMl(liquidHolding(holdsG, targets))
  return overCeilings(weighed, volumeMl(poured), finishedMl)
}

/** Null where every limit is kept. */
export function overInJar(story: Story): OverInJar | null {
  const over = limitsPassed(story)
  if (over.length === 0) return null
  const isWithin = (add: SpiritToAdd): boolean => limitsPassed(withSpirit(story, add)).length === 0
  return { over, add: spiritToAdd(story, contentsOf(story).outcome.volumeMl.value, isWithin) }
}
