import { plantSaid } from '../../botanical/find/plant-said.ts'
import { DomainError } from '../../domain-error.ts'
import { plus } from '../../quantity/measured/measured.ts'
import { shown, type TypedText, textFrom } from '../../quantity/read/tokens.ts'
import { measureSaid } from '../../quantity/said/measure-said.ts'
import { numberSaid } from '../../quantity/said/number-said.ts'
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

/** What says that some of it stays in. */
const PART =
  /^(?:(?:about|only|just|the|circa|solo)\s+)*(?:half|some|part|most|a few|few|a third|a quarter|one of|two of|meta|metà|alcun[ie]|qualche|parte|un po)(?:\s+(?:of|di|de[li]|della|delle|the|its|my))*\s+/i

/** `Peel`: of the one that has it in its name. */
const only = <Each>(all: readonly Each[]): Each | undefined => (all.length === 1 ? all[0] : undefined)

/** `Two lemons`, `a chilli`: how many of what is named, and where that ends. */
const countedIn = (typed: TypedText) => numberSaid(typed, 0, new Set(typed.tokens.map(({ text }) => text)))

function withoutCount(text: string): string {
  const typed = saidText(text)
  return textFrom(typed, countedIn(typed)?.next ?? 0)
}

/** Of what went in, from this share on it is all: a scale and a handful of wet fruit tell no better. Estimated. */
const ALL_SHARE = 0.9

/** Whether a text names less of a plant than is in, by its words, its weight or its count. */
function isPart(text: string, found: PlantOut, story: JarState): boolean {
  if (PART.test(text)) return true
  const typed = saidText(text)
  const amount = measureSaid(typed, 0, NONE)
  if (amount?.kind === 'mass') return amount.value < ALL_SHARE * found.massG.value
  const counted = amount === null ? countedIn(typed) : null
  const count = story.started.plants.find((plant) => plantKey(plant) === plantKey(found))?.count ?? null
  return counted !== null && count !== null && counted.value < ALL_SHARE * count
}

/**
 * The plants of a jar that a text names. Throws `not_in_jar` with what is in it, and `part_lifted` where some of it is to stay:
 * how much of a plant that has given its juice is left tells no scale.
 */
export function liftedOut(story: JarState, text: string): readonly PlantOut[] {
  const inside = plantsInside(story)
  return text
    .split(BETWEEN)
    .map((typed) => ({
      typed: typed.trim(),
      part: withoutCount(typed.trim().replace(PART, '').replace(AMOUNT, '').trim()),
    }))
    .filter(({ part }) => part !== '')
    .map(({ typed, part }): PlantOut => {
      const ids = idsOf(part)
      const key = nameKey(part)
      const meant = inside.filter(({ id }) => id !== null && ids.includes(id))
      const found =
        (meant.length === 1 ? meant[0] : undefined) ??
        inside.find((plant) => nameKey(plant.name) === key) ??
        inside.find((plant) => nameKey(plant.name).startsWith(key)) ??
        only(inside.filter((plant) => nameKey(plant.name).includes(key)))
      if (found !== undefined && isPart(typed, found, story)) {
        throw new DomainError('bad_value', 'part_lifted', {
          jar: story.name,
          typed: shown(part),
          plant: { id: found.id, name: found.name },
        })
      }
      if (found !== undefined) return found
      throw new DomainError('not_found', 'not_in_jar', {
        jar: story.name,
        typed: shown(part),
        plants: inside.map(({ id: known, name }) => ({ id: known, name })),
      })
    })
}
