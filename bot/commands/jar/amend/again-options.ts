import type { Botanical } from '../../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import { isFormAsked } from '../../../../core/botanical/find/in-form.ts'
import { DomainError } from '../../../../core/domain-error.ts'
import type { JarEntry, PlantIn } from '../../../../core/jar/entry/entry.ts'
import { ingredientsOf } from '../../../../core/jar/state/batch-facts.ts'
import type { Story } from '../../../../core/jar/state/jar-state.ts'
import { abvPercent, ethanolG, type Liquid, mix, water } from '../../../../core/liquid/liquid.ts'
import { usProofFromAbvPercent } from '../../../../core/liquid/proof.ts'
import { readPlants } from '../../../../core/recipe/plan/find-plants.ts'
import { liquidOf, type Portion } from '../../../../core/recipe/portion.ts'
import { valuesOf } from '../../../../core/recipe/propagate.ts'
import { sugars } from '../../../../core/recipe/sweetening.ts'
import { weighedG } from '../../../../core/recipe/tool-precision.ts'

type Options = Readonly<Record<string, string>>
type Read = ReturnType<typeof readPlants>['plants'][number]

/** More digits than a cook can weigh out; never three after the point, which might be read as thousands. */
export const written = (value: number): string => (value < 1 ? value.toFixed(4) : String(Number(value.toFixed(2))))

/** How its start stands, option by option: as typed, and as corrected since. */
export function standingOptions({ started }: Story, entries: readonly JarEntry[]): Options {
  const undone = new Set(entries.flatMap((entry) => (entry.kind === 'undone' ? [entry.of] : [])))
  const corrections = entries.filter(
    (entry) => entry.kind === 'corrected' && entry.of === started.seq && !undone.has(entry.seq),
  )
  return Object.fromEntries([...started.typed, ...corrections.flatMap(({ typed }) => typed)])
}

/** From so much on a kitchen scale tells it, g. */
const SCALE_G = 10

/** As a cook weighs it out: where it is said to be read only. */
export const weighedText = (massG: number): string =>
  massG < SCALE_G ? String(Number(massG.toPrecision(2))) : String(weighedG(massG))

const pour = (spirits: readonly Portion[]): Liquid => mix(...valuesOf(spirits).map(liquidOf))

export const strengthOf = (spirits: readonly Portion[], waterG: number): number =>
  abvPercent(mix(pour(spirits), water(waterG)))

/** How many times as much goes in: by the alcohol, so that a glass of it holds as much of the plants as before. */
export const factorOf = (story: Story, other: OtherSpirit | null): number =>
  other === null ? 1 : ethanolG(pour(other.spirits)) / ethanolG(pour(ingredientsOf(story).spirits))

const at = (tempC: number | null): string => (tempC === null || tempC === 20 ? '' : ` at ${written(tempC)} C`)

/** `700 ml`, as the grammar reads it. */
export const pouredText = ({ amount, by, atC }: Portion): string =>
  by === 'mass' ? `${written(amount.value)} g` : `${written(amount.value)} ml${at(atC)}`

/** `75.5%`, as the grammar reads it. */
export function strengthText({ abvPercent: { value }, abvAtC, readsProof }: Portion): string {
  const strength = readsProof === true ? `${written(usProofFromAbvPercent(value))} proof` : `${written(value)}%`
  return `${strength}${at(abvAtC)}`
}

/** `250 g/L` after a space, as the grammar reads it; empty where there is no sugar in it. */
export const sugarText = ({ sugarGPerL: { value } }: Portion): string => (value === 0 ? '' : ` ${written(value)} g/L`)

/** `700 ml 75.5%`, `500 ml 28% 250 g/L`, as the grammar reads it. */
export const portionText = (portion: Portion): string =>
  `${pouredText(portion)} ${strengthText(portion)}${sugarText(portion)}`

/** What the maker called each plant at the start; nothing where that cannot be read any more. */
function readAgain(of: string | undefined): readonly Read[] {
  try {
    return of === undefined ? [] : readPlants(of).plants
  } catch (error) {
    if (error instanceof DomainError) return []
    throw error
  }
}

/** Fewer of a plant are not counted any more. */
const LEAST_COUNT = 0.2

/** Halves of a fruit where they are near enough, else two digits. */
function countText(count: number): string {
  const halves = Math.round(count * 2) / 2
  return Math.abs(halves - count) <= 0.02 * count ? String(halves) : String(Number(count.toPrecision(2)))
}

/** `7.5 lemons`, `2 stick of cinnamon`; null where the plant was not counted. */
function countedText({ typed }: Read, count: number): string | null {
  const { amount, kind, noun } = typed
  if (amount?.kind !== 'count' || count < LEAST_COUNT) return null
  if (kind === 'teaspoon') return `${countText(count)} tsp ${noun}`
  const piece = kind ?? amount.piece
  return piece === null ? `${countText(count)} ${noun}` : `${countText(count)} ${piece} of ${noun}`
}

/** Its name within a line, with its state where a plant is not planned without. */
export const titleOf = (botanical: Botanical): string => {
  const { names, form } = botanical
  const noun = `${names.title.charAt(0).toLowerCase()}${names.title.slice(1)}`
  return isFormAsked(botanical) ? `${form.state} ${noun}` : noun
}

/** A plant's name; only the maker's own word tells that it was dried. */
const nounOf = ({ id, name }: PlantIn, said: Read | undefined): string => {
  if (id === null) return name
  return said === undefined || said.saidState === null ? titleOf(botanicalById(id)) : said.typed.noun
}

function plantText(plant: PlantIn, factor: number, read: readonly Read[]): string {
  const { id, massG, count } = plant
  const said = read.find(({ botanical }) => botanical.id === id)
  const counted = said === undefined || count === null ? null : countedText(said, count * factor)
  return counted ?? `${written(massG.value * factor)} g ${nounOf(plant, said)}`
}

/** The same plant named twice is once as much of it. */
export const together = (plants: readonly PlantIn[]): readonly PlantIn[] => {
  const keyOf = ({ id, name }: PlantIn): string => id ?? `“${name}`
  return [...new Set(plants.map(keyOf))].map((key) => {
    const same = plants.filter((plant) => keyOf(plant) === key)
    const [first] = same
    const value = same.reduce((sum, { massG }) => sum + massG.value, 0)
    return same.length === 1 ? first! : { ...first!, count: null, massG: { value, plusMinus: 0 } }
  })
}

/** The strength at which it steeped, where water went in first and this spirit is stronger. */
function dilutedTo({ started }: Story, spirits: readonly Portion[]): Options {
  if (started.waterG.value === 0) return {}
  const steeped = strengthOf(started.spirits, started.waterG.value)
  return strengthOf(spirits, 0) <= steeped ? {} : { 'steep-at': `${written(steeped)}%` }
}

const targetsOf = ({ targets }: Story['started']): Options =>
  targets === null
    ? {}
    : { 'to-strength': `${written(targets.abvPercent)}%`, 'to-sweetness': `${written(targets.sugarGPerL)} g/L` }

/** The bottles that were planned; with other spirit only their size, as many as it fills. */
export function bottlesAgain({ bottles }: Story['started'], isOther: boolean): Options {
  const texts = bottles.map(({ count, volumeMl }) => `${count === null ? '' : `${count} x `}${written(volumeMl)} ml`)
  const [first] = bottles
  if (first === undefined) return {}
  return { bottles: isOther ? `${written(first.volumeMl)} ml` : texts.join(' + ') }
}

export interface OtherSpirit {
  readonly typed: string
  readonly spirits: readonly Portion[]
}

/**
 * What to type to start a batch once more, with as much of the same spirit or, where `other` is not null, with that:
 * everything that went in, by the alcohol, and the same targets.
 */
export function againOptions(story: Story, entries: readonly JarEntry[], other: OtherSpirit | null): Options {
  const before = standingOptions(story, entries)
  const { plants, spirits, sweetenings } = ingredientsOf(story)
  const factor = factorOf(story, other)
  const sugarG = sugars(sweetenings)
  const read = readAgain(before.of)
  return {
    of: together(plants)
      .map((plant) => plantText(plant, factor, read))
      .join(' + '),
    spirit: other?.typed ?? spirits.map(portionText).join(' + '),
    ...(sugarG.value > 0 ? { sugar: `${written(sugarG.value * factor)} g` } : {}),
    ...targetsOf(story.started),
    ...bottlesAgain(story.started, other !== null),
    ...dilutedTo(story, other?.spirits ?? spirits),
    ...(before.days === undefined ? {} : { days: before.days }),
    ...(plants.some(({ id }) => id === null) ? { 'unknown-ok': 'yes' } : {}),
  }
}
