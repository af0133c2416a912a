import { plantSaid } from '../../botanical/find/plant-said.ts'
import { DomainError } from '../../domain-error.ts'
import { plus } from '../../quantity/measured/measured.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { saidText } from '../../quantity/said/said-text.ts'
import type { PlantOut } from '../entry/entry.ts'
import { nameKey } from '../entry/jar-name.ts'
import type { JarState } from '../state/jar-state.ts'
import { plantKey, plantsOfStart } from '../state/later-plants.ts'

/** The plants that are in a jar now, each once: those that went in and were not lifted out since. */
export function plantsInside(story: JarState): readonly PlantOut[] {
  const inside = new Map<string, PlantOut>()
  for (const entry of story.happened) {
    if (entry.kind === 'taken_out') for (const plant of entry.plants) inside.delete(plantKey(plant))
    if (entry.kind !== 'started' && entry.kind !== 'added') continue
    const plants =
      entry.kind === 'started'
        ? [...plantsOfStart(story).filter(({ addOn }) => addOn === null), ...(entry.secondOf?.plants ?? [])]
        : entry.plants
    for (const { id, name, massG } of plants) {
      const key = plantKey({ id, name })
      const before = inside.get(key)
      inside.set(key, { id, name, massG: before === undefined ? massG : plus(before.massG, massG) })
    }
  }
  return [...inside.values()]
}

/** Separates plants: `chilli + cloves`, `chilli and cloves`. */
const BETWEEN = /\s*(?:\+|,|;|\band\b|&)\s*/i

/** A count or an amount before a plant's name: all of it comes out. */
const AMOUNT = /^(?:the|all|all the|\d[\d.,/]*\s*(?:g|kg|oz|lb)?)\s+/i

/** Ids of the catalogue that a name may stand for: of `chilli` the fresh and the dried one. */
const idsOf = (typed: string): readonly string[] => {
  const { tokens } = saidText(typed)
  const said = plantSaid(tokens, 0, NONE)
  return said !== null && said.next === tokens.length ? said.ids : []
}

const NONE: ReadonlySet<string> = new Set()

/** The plants of a jar that a text names. Throws `not_in_jar` with what is in it. */
export function liftedOut(story: JarState, text: string): readonly PlantOut[] {
  const inside = plantsInside(story)
  return text
    .split(BETWEEN)
    .map((part) => part.replace(AMOUNT, '').trim())
    .filter((part) => part !== '')
    .map((part): PlantOut => {
      const ids = idsOf(part)
      const key = nameKey(part)
      const meant = inside.filter(({ id }) => id !== null && ids.includes(id))
      const found =
        (meant.length === 1 ? meant[0] : undefined) ??
        inside.find((plant) => nameKey(plant.name) === key) ??
        inside.find((plant) => nameKey(plant.name).startsWith(key))
      if (found !== undefined) return found
      throw new DomainError('not_found', 'not_in_jar', {
        jar: story.name,
        typed: shown(part),
        plants: inside.map(({ id: known, name }) => ({ id: known, name })),
      })
    })
}
