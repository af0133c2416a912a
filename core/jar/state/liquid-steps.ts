import { botanicalById, catalogue } from '../../botanical/catalogue/catalogue.ts'
import { MODEL_VOLUME_ERROR } from '../../liquid/model-error.ts'
import { once } from '../../once.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { plantOf } from '../../recipe/plan/plant-of.ts'
import { plantUnknown } from '../../recipe/plan/unknown-plant.ts'
import { FILTER_SHARE, type Plant, type Steeping } from '../../recipe/steep.ts'
import { type KnownSweetening, knownSweetenings } from '../../recipe/sweetening.ts'
import type { HappeningEntry, OfFruit, PlantIn, ReadAmount, ReadStrength, Strained, Sweetened } from '../entry/entry.ts'
import { plantKey } from './later-plants.ts'

/** What changes a jar's liquid, with everything in it that is known only to within a ±. */
export type LiquidStep =
  | ({ readonly kind: 'in' } & Steeping)
  | {
      readonly kind: 'strained'
      readonly measured: ReadAmount | null
      readonly strength: ReadStrength | null
      readonly rinseWaterG: Measured
      readonly filterShare: Measured
      /** By how much what is dissolved makes the liquid denser than the model has it, as a share of its whole error. */
      readonly denserShare: Measured
    }
  | {
      readonly kind: 'filtered'
      readonly measured: ReadAmount | null
      readonly filterShare: Measured
      /** Lees take their share whatever filters took before. */
      readonly isRacked: boolean
    }
  /** Sugar on the strained plants: the liquid in the jar stays as it is. */
  | { readonly kind: 'fruit_sugared'; readonly sweetenings: readonly KnownSweetening[] }
  /** What that sugar drew out goes in, with what else does. */
  | {
      readonly kind: 'fruit_drawn'
      readonly measured: ReadAmount | null
      readonly waterG: Measured
      readonly sweetenings: readonly KnownSweetening[]
      /** Of the plants' own juice that spirit had not drawn, what sugar draws, 0 to 1. */
      readonly juiceShare: Measured
      /** Of what the plants had soaked up, as much by volume stays in them, 0 to 1. */
      readonly stayShare: Measured
    }
  | { readonly kind: 'measured'; readonly abvPercent: Measured; readonly sugarGPerL: Measured }
  /** Plants lifted out, with what they soak up. */
  | { readonly kind: 'taken_out'; readonly plants: readonly Plant[] }
  | { readonly kind: 'parted'; readonly kept: Measured }

/** Only a strength that was read over what is dissolved feels it. */
const MODEL_DENSITY: Measured = { value: 0, plusMinus: MODEL_VOLUME_ERROR }

/** Of what is racked, the share that stays on the lees. Estimated; nobody has published it. */
const LEES_SHARE: Measured = { value: 0.03, plusMinus: 0.02 }

/** Sugar draws some of what is left of a fruit's own juice. Estimated; nobody has published it. */
const JUICE_DRAWN_SHARE: Measured = { value: 0.5, plusMinus: 0.3 }

/** Of what a fruit had soaked up, as much stays in it when its sugar has dissolved and is poured off. Estimated; nobody has published it. */
const FRUIT_KEEPS_SHARE: Measured = { value: 0.5, plusMinus: 0.3 }

/** What was strained, as it was read. */
export const strainedStep = ({
  measured,
  strength,
  rinseWaterG = exactly(0),
}: Pick<Strained, 'measured' | 'strength'> & Partial<Pick<Strained, 'rinseWaterG'>>): LiquidStep => ({
  kind: 'strained',
  measured,
  strength,
  rinseWaterG,
  filterShare: FILTER_SHARE,
  denserShare: strength === null ? exactly(0) : MODEL_DENSITY,
})

/** The step and the entry it comes from. */
export interface TakenStep {
  readonly seq: number
  readonly step: LiquidStep
}

const known: ReadonlySet<string> = new Set(catalogue.map(({ id }) => id))

/** Whether the catalogue has it. */
export const isCatalogued = (id: string): boolean => known.has(id)

const steepsAs = ({ id, massG }: Pick<PlantIn, 'id' | 'massG'>): Plant =>
  id !== null && isCatalogued(id) ? plantOf(botanicalById(id), massG) : plantUnknown({ massG })

/** What steeped before gives nothing more than what it has soaked up, and soaks up as much again. */
const steepsAgain = (plant: PlantIn): Plant => ({
  ...steepsAs(plant),
  waterShare: exactly(0),
  sugarShare: exactly(0),
  extractShare: exactly(0),
})

/**
 * The plants that went in with the first: a later one only once the jar is strained, its day had come and nothing was said
 * of putting it in, because then it was put in all the same.
 */
function plantsAtStart(plants: readonly PlantIn[], happened: readonly HappeningEntry[]): readonly PlantIn[] {
  const strainedOn = happened.find(({ kind }) => kind === 'strained')?.day
  const addedLater = new Set(happened.flatMap((entry) => (entry.kind === 'added' ? entry.plants.map(plantKey) : [])))
  return plants.filter(
    (plant) =>
      plant.addOn === null ||
      (strainedOn !== undefined && plant.addOn <= strainedOn && !addedLater.has(plantKey(plant))),
  )
}

/** In order, as they were entered; what does not touch the liquid is left out. */
export const stepsOf = (happened: readonly HappeningEntry[]): readonly TakenStep[] =>
  happened.flatMap((entry) => {
    const step = isByLater(entry) ? stepOf(entry, happened) : ownStep(entry)
    return step === null ? [] : [{ seq: entry.seq, step }]
  })

/** Whether what came later tells what it is. */
const isByLater = (entry: HappeningEntry): boolean =>
  entry.kind === 'started' && entry.plants.some(({ addOn }) => addOn !== null)

const ownStep = once((entry: HappeningEntry): LiquidStep | null => stepOf(entry, [entry]))

/** What sugar drew out of strained fruit, and what goes in with it. */
export const drawnStep = (
  { waterG, sweetenings }: Pick<Sweetened, 'waterG' | 'sweetenings'>,
  { measured }: OfFruit,
): LiquidStep => ({
  kind: 'fruit_drawn',
  measured,
  waterG,
  sweetenings: knownSweetenings(sweetenings),
  juiceShare: JUICE_DRAWN_SHARE,
  stayShare: FRUIT_KEEPS_SHARE,
})

function stepOf(entry: HappeningEntry, happened: readonly HappeningEntry[]): LiquidStep | null {
  switch (entry.kind) {
    case 'started':
    case 'added': {
      const { waterG, sweetenings } = entry
      const plants = entry.kind === 'started' ? plantsAtStart(entry.plants, happened) : entry.plants
      const again = entry.kind === 'started' ? entry.secondOf : undefined
      return {
        kind: 'in',
        spirits: again === undefined ? entry.spirits : [...entry.spirits, again.soaked],
        waterG,
        sweetenings: knownSweetenings(sweetenings),
        plants: [...plants.map(steepsAs), ...(again?.plants ?? []).map(steepsAgain)],
      }
    }
    case 'fruit_sugared':
      return { kind: 'fruit_sugared', sweetenings: knownSweetenings(entry.sweetenings) }
    case 'sweetened':
      if (entry.ofFruit !== undefined) return drawnStep(entry, entry.ofFruit)
      return {
        kind: 'in',
        spirits: [],
        waterG: entry.waterG,
        sweetenings: knownSweetenings(entry.sweetenings),
        plants: [],
      }
    case 'strained': {
      return strainedStep(entry)
    }
    case 'filtered':
      return {
        kind: 'filtered',
        measured: entry.measured,
        filterShare: entry.isRacked === true ? LEES_SHARE : FILTER_SHARE,
        isRacked: entry.isRacked === true,
      }
    case 'poured_in':
      // Of a jar that is known already: what it was made of is told beside.
      return { kind: 'in', spirits: [entry.liquid], waterG: exactly(0), sweetenings: knownSweetenings([]), plants: [] }
    case 'taken_out':
      return { kind: 'taken_out', plants: entry.plants.map(steepsAs) }
    case 'parted':
      return { kind: 'parted', kept: entry.kept }
    case 'measured':
      return { kind: 'measured', abvPercent: entry.abvPercent, sugarGPerL: entry.sugarGPerL }
    default:
      return null
  }
}
