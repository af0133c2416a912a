import { expectNotRefused } from '../botanical/refuse/refusal.ts'
import { undrinkableIn } from '../botanical/refuse/refuse-spirit.ts'
import { DomainError, isRefused } from '../domain-error.ts'
import { shown } from '../quantity/read/tokens.ts'
import { editDistance } from '../spelling/edit-distance.ts'
import { nameWords } from '../spelling/normalise-name.ts'
import { isOneTypo } from '../spelling/one-typo.ts'
import { type SymptomId, symptomIds, symptoms } from './symptoms.ts'

/** Words that tell nothing of what is wrong. */
const FILLERS: ReadonlySet<string> = new Set(
  (
    'it its is was are has have been had my mine our this that there theres got gone went turned looks looking feels a bit ' +
    'very really all quite rather so and now e ho ha mi si molto tutto po sono'
  ).split(' '),
)

interface Known {
  readonly id: SymptomId
  readonly words: readonly string[]
  readonly key: string
  readonly bare: string
}

const keyOf = (words: readonly string[]): string => words.join(' ')
const bareOf = (words: readonly string[]): string => words.filter((word) => !FILLERS.has(word)).join(' ')

const known: readonly Known[] = symptomIds.flatMap((id) =>
  [id.replaceAll('_', ' '), ...symptoms[id].en, ...symptoms[id].it].map((name): Known => {
    const words = nameWords(name)
    return { id, words, key: keyOf(words), bare: bareOf(words) }
  }),
)

/** From so many letters on a slip is forgiven. */
const TYPO_LETTERS = 5

const idsOf = (found: readonly Known[]): readonly SymptomId[] => [...new Set(found.map(({ id }) => id))]

const only = (found: readonly Known[]): SymptomId | null => {
  const ids = idsOf(found)
  return ids.length === 1 ? ids[0]! : null
}

/** The longest name all of whose words were said, in their order; null where two symptoms have one as long. */
function within(words: readonly string[]): SymptomId | null {
  const text = ` ${keyOf(words)} `
  const said = known.filter(({ key }) => key !== '' && text.includes(` ${key} `))
  const longest = Math.max(0, ...said.map(({ words: { length } }) => length))
  return only(said.filter(({ words: { length } }) => length === longest))
}

/** The symptom that a text names, whatever is said around it; null where none, or more than one, is. */
export function symptomIn(text: string): SymptomId | null {
  const words = nameWords(text)
  const [key, bare] = [keyOf(words), bareOf(words)]
  if (key === '') return null
  return (
    only(known.filter((each) => each.key === key)) ??
    (bare === '' ? null : only(known.filter((each) => each.bare === bare))) ??
    within(words) ??
    only(known.filter((each) => each.key.length >= TYPO_LETTERS && isOneTypo(key, each.key))) ??
    only(known.filter((each) => each.bare.length >= TYPO_LETTERS && isOneTypo(bare, each.bare)))
  )
}

const JOINED = /[,;.+&]|(?<!\p{L})(?:and|but|also|plus|e|ed|ma|anche)(?!\p{L})/iu

const partsOf = (text: string): readonly string[] => text.split(JOINED).filter((part) => bareOf(nameWords(part)) !== '')

const isName = (text: string): boolean => {
  const words = nameWords(text)
  const [key, bare] = [keyOf(words), bareOf(words)]
  return known.some((each) => each.key === key || (bare !== '' && each.bare === bare))
}

/** All symptoms that a text names, in its order, each once: `cloudy and fizzing` are two, `slimy and thick` is one. */
export function symptomsIn(text: string): readonly SymptomId[] {
  const whole = symptomIn(text)
  if (whole !== null && isName(text)) return [whole]
  const parts = partsOf(text).flatMap((part) => symptomIn(part) ?? [])
  return [...new Set(whole === null || parts.includes(whole) ? parts : [whole, ...parts])]
}

/** Whether a text says nothing beside the names of symptoms: what else is said would be dropped. */
export const isSymptomName = (text: string): boolean => isName(text) || partsOf(text).every(isName)

/** Nearer than this share of its letters a name may be what was meant. */
const NEAR_SHARE = 0.5

/** The symptoms that a text is nearest to, at most three. */
export function nearestSymptoms(text: string): readonly SymptomId[] {
  const words = nameWords(text)
  const said = new Set(words)
  const key = bareOf(words)
  const near = known
    .map((each) => {
      const shared = each.words.filter((word) => said.has(word) && !FILLERS.has(word)).length
      const slips = key === '' ? 1 : editDistance(key, each.bare) / Math.max(key.length, each.bare.length, 1)
      return { id: each.id, away: shared > 0 ? 0.4 - shared / 10 : slips }
    })
    .filter(({ away }) => away < NEAR_SHARE)
    .toSorted((one, other) => one.away - other.away)
  return [...new Set(near.map(({ id }) => id))].slice(0, 3)
}

/** What must not be in a jar is a trouble whatever else was said of it. */
function dangerIn(text: string): SymptomId | null {
  if (undrinkableIn(text) !== null) return 'wrong_spirit'
  return isRefused(() => expectNotRefused(text)) ? 'unknown_plant' : null
}

/** What is wrong, in the words people use, one at least. Throws `unknown_symptom` with those that come nearest. */
export function parseSymptoms(text: string): readonly SymptomId[] {
  const found = symptomsIn(text)
  if (found.length > 0) return found
  const danger = dangerIn(text)
  if (danger !== null) return [danger]
  const nearest = nearestSymptoms(text).map((id) => symptoms[id].en[0]!)
  throw new DomainError('bad_value', 'unknown_symptom', { typed: shown(text), nearest })
}

export const isSymptom = (text: string): text is SymptomId => Object.hasOwn(symptoms, text)
