import { botanicalById } from '../../core/botanical/catalogue/catalogue.ts'
import { isCatalogued } from '../../core/jar/state/liquid-steps.ts'
import { parseStrength } from '../../core/quantity/read/parse-strength.ts'
import { isoDay } from '../../core/quantity/time/calendar-day.ts'
import { parseDate } from '../../core/quantity/time/parse-date.ts'
import { dayAt } from '../../core/quantity/time/zone.ts'
import type { NamedByMaker, Origin, PlantWords, SteepSpan } from '../../core/recipe/batch.ts'
import { readPlants, wordsOf } from '../../core/recipe/plan/find-plants.ts'
import { parseDays } from '../../core/recipe/plan/parse-answers.ts'
import { USUAL_BOTTLE_ML } from '../../core/recipe/plan/parse-bottles.ts'

/** Parts of a file of version 3, as far as they are read here; what is not so is left to the schema. */
type Loose = Readonly<Record<string, unknown>>
type Typed = readonly (readonly [option: string, text: string])[]
interface LooseEntry extends Loose {
  readonly seq: number
  readonly kind: string
  readonly typed: Typed
}

const isRecord = (value: unknown): value is Loose => typeof value === 'object' && value !== null

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : [])

const isTyped = (value: unknown): value is Typed =>
  Array.isArray(value) && value.every((pair) => Array.isArray(pair) && pair.every((text) => typeof text === 'string'))

const isEntry = (value: unknown): value is LooseEntry =>
  isRecord(value) && typeof value.seq === 'number' && typeof value.kind === 'string' && isTyped(value.typed)

/** What a text says; null where it cannot be read any more. */
function readAgain<Read>(text: string | undefined, read: (text: string) => Read): Read | null {
  try {
    return text === undefined ? null : read(text)
  } catch {
    return null
  }
}

/** What was said of a plant of the catalogue. */
interface SaidPlant {
  readonly isDried: boolean
  readonly isUsual: boolean
  readonly words: PlantWords
}

type SaidPlants = ReadonlyMap<string, SaidPlant>

const dries = (id: string): boolean => botanicalById(id).driedPerFresh !== null

const saidPlants = (of: string): SaidPlants =>
  new Map(
    readPlants(of).plants.map((found) => {
      const { id } = found.botanical
      const isDried = found.saidState === 'dried' && dries(id)
      return [id, { isDried, isUsual: found.massG === null, words: wordsOf(found) }]
    }),
  )

/** Where a text cannot be read any more, the word alone tells that its plants were dried. */
const DRIED = /\b(?:dr(?:y|ied)|secc|essiccat)/i

const MOST_REMEMBERED = 5000
const remembered = new Map<string, SaidPlants | null>()

/** People name few plants in many jars. */
function plantsIn(of: string | undefined): SaidPlants | null {
  if (of === undefined) return null
  const known = remembered.get(of)
  if (known !== undefined) return known
  const read = readAgain(of, saidPlants)
  if (remembered.size < MOST_REMEMBERED) remembered.set(of, read)
  return read
}

const plantOf = (plant: unknown, of: string | undefined): unknown => {
  if (!isRecord(plant)) return plant
  const id = typeof plant.id === 'string' ? plant.id : null
  const all = plantsIn(of)
  const said = id === null ? undefined : all?.get(id)
  const isDriedByWord =
    of !== undefined && all === null && id !== null && isCatalogued(id) && DRIED.test(of) && dries(id)
  return {
    ...plant,
    isDried: said?.isDried ?? isDriedByWord,
    isUsual: said?.isUsual ?? false,
    words: said?.words ?? null,
  }
}

const plantsOf = (plants: unknown, of: string | undefined): unknown =>
  Array.isArray(plants) ? plants.map((plant) => plantOf(plant, of)) : plants

/** Nothing where there was none. */
const sweeteningsOf = (sugarG: unknown): readonly unknown[] =>
  isRecord(sugarG) && sugarG.value === 0 && sugarG.plusMinus === 0 ? [] : [{ material: 'white_sugar', massG: sugarG }]

const ORIGIN = /^([^@]*?)(?:@(?:[0-9a-z]+\.)?([0-9a-z]{8}))?$/

function originOf(from: string | undefined): Origin | null {
  if (from === undefined) return null
  const [, code = '', shareId = null] = ORIGIN.exec(from.trim()) ?? []
  const letters = code.toUpperCase().replace(/[^0-9A-Z]/g, '')
  return { code: letters, shareId }
}

interface When {
  readonly country: string | null
  readonly zone: unknown
  readonly enteredMs: unknown
}

function dayOf(text: string, { country, zone, enteredMs }: When): string {
  const today = dayAt(String(zone), Number(enteredMs))
  return isoDay(parseDate(text, { today, country }, 'after_today'))
}

const isOtherBottle = (bottle: unknown): boolean =>
  isRecord(bottle) && (bottle.count !== null || bottle.volumeMl !== USUAL_BOTTLE_ML)

const spanOf = (text: string): SteepSpan => {
  const { days, months, nominalDays } = parseDays(text)
  return { days, months, nominalDays }
}

function namedOf(
  said: ReadonlyMap<string, string>,
  bottles: unknown,
  hasTargets: boolean,
  when: When,
): NamedByMaker<string> {
  const isFromCode = said.has('from')
  return {
    isStrengthNamed: said.has('to-strength') || (isFromCode && hasTargets),
    isSweetnessNamed: said.has('to-sweetness') || (isFromCode && hasTargets),
    areBottlesNamed: said.has('bottles') || listOf(bottles).some(isOtherBottle),
    isSpiritNamed: said.has('spirit') || isFromCode,
    steepAtPercent: readAgain(said.get('steep-at'), (text) => parseStrength(text).abvPercent),
    readyBy: readAgain(said.get('ready-by'), (text) => dayOf(text, when)),
    steepFor: readAgain(said.get('days'), spanOf),
  }
}

/** A happening with what was typed of it as fields. */
function happeningOf(happening: Loose, typed: Typed, when: When): Loose {
  const { sugarG, plan, ...others } = happening
  const said = new Map(typed)
  const of = said.get('of')
  switch (happening.kind) {
    case 'started': {
      const { targets, bottles, ...days } = isRecord(plan) ? plan : { targets: null, bottles: [] }
      return {
        ...others,
        plants: plantsOf(happening.plants, of),
        sweetenings: sweeteningsOf(sugarG),
        targets,
        days,
        bottles,
        named: namedOf(said, bottles, targets !== null, when),
        origin: originOf(said.get('from')),
      }
    }
    case 'added':
      return {
        ...others,
        plants: plantsOf(happening.plants, of),
        sweetenings: sweeteningsOf(sugarG),
      }
    case 'sweetened':
      return { ...others, sweetenings: sweeteningsOf(sugarG) }
    default:
      return happening
  }
}

/** What stands typed of the entry `seq` before the entry at `index`, corrections that were not taken back by then included. */
function typedBefore(entries: readonly LooseEntry[], seq: unknown, index: number): Typed {
  const before = entries.slice(0, index)
  const undone = new Set(before.flatMap((entry) => (entry.kind === 'undone' ? [entry.of] : [])))
  return before.flatMap((entry) =>
    entry.seq === seq || (entry.kind === 'corrected' && entry.of === seq && !undone.has(entry.seq)) ? entry.typed : [],
  )
}

/** The entries of a jar of version 3 as those of version 4: the last time that what was typed is read. */
export function entriesToVersion4(stored: unknown, country: string | null): unknown {
  const entries = listOf(stored)
  if (!Array.isArray(stored) || !entries.every(isEntry)) return stored
  return entries.map((entry, index) => {
    const when = { country, zone: entry.zone, enteredMs: entry.enteredMs }
    if (entry.kind !== 'corrected' || !isRecord(entry.by)) return happeningOf(entry, entry.typed, when)
    const typed = [...typedBefore(entries, entry.of, index), ...entry.typed]
    const begun = entries.find(({ seq }) => seq === entry.of)
    return { ...entry, by: happeningOf(entry.by, typed, { ...when, enteredMs: begun?.enteredMs }) }
  })
}
