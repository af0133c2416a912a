import type { PieceKind } from '../../../core/botanical/botanical.ts'
import { abvPercentFromUsProof, usProofFromAbvPercent } from '../../../core/liquid/proof.ts'
import { times } from '../../../core/quantity/measured/measured.ts'
import type { Mass, Piece, Span, Strength, SugarRead, Sweetness, Volume } from '../../../core/quantity/quantities.ts'
import { grams, gramsPerLitre, millilitres, percentVol, sizeOf } from '../../../core/quantity/write/made-amounts.ts'
import { sizeTold } from '../../../core/quantity/write/size-told.ts'
import { writeSweetener } from '../../../core/quantity/write/write-quantity.ts'
import { type Batch, type BatchPlant, cutCount } from '../../../core/recipe/batch.ts'
import type { DrinkPart } from '../../../core/recipe/drinks-in.ts'
import { botanicalOf } from '../../../core/recipe/plan/batch-wish.ts'
import { type FoundPlant, findPlantNamed, isZest, type PlantsRead } from '../../../core/recipe/plan/find-plants.ts'
import { parseDays } from '../../../core/recipe/plan/parse-answers.ts'
import type { Bottles } from '../../../core/recipe/plan/parse-bottles.ts'
import type { TypedPlant } from '../../../core/recipe/plan/parse-plants.ts'
import { COUNTED_WITH_OF } from '../../../core/recipe/plan/piece-words.ts'
import type { TypedUnknown } from '../../../core/recipe/plan/unknown-plant.ts'
import type { NamedPortion, Portion } from '../../../core/recipe/portion.ts'
import { isSweetened, joinSweetenings } from '../../../core/recipe/sweetening.ts'
import { weighedOut } from '../../../core/recipe/tool-precision.ts'
import { asOptionProblem, type Given } from '../../calls/option.ts'
import { asWritten, portionText, strengthText, sugarWritten, titleOf, written } from './written-amounts.ts'

/** Measured out anew: the tool's ± is all there is, whatever digits were typed the first time. */
const volumeIs = (volumeMl: number, atC: number | null = null): Volume => ({
  ...millilitres(asWritten(volumeMl)),
  halfDigitMl: 0,
  atC: atC === null || atC === 20 ? null : asWritten(atC),
})

const massIs = (massG: number): Mass => ({ ...grams(asWritten(massG)), halfDigitG: 0 })

const percentIs = (abvPercent: number, statedPercent: number | null = null, atC: number | null = null): Strength => ({
  ...percentVol(asWritten(abvPercent)),
  halfDigitPercent: 0,
  statedPercent,
  atC: atC === null ? null : asWritten(atC),
})

const sweetnessIs = (sugarGPerL: number, statedGPerL: number | null = null): Sweetness => ({
  ...gramsPerLitre(asWritten(sugarGPerL)),
  halfDigitGPerL: 0,
  statedGPerL,
})

function strengthIs({ abvPercent: { value, plusMinus }, abvAtC, readsProof }: Portion): Strength {
  const percent = percentIs(value, plusMinus, abvAtC)
  if (readsProof !== true) return percent
  const abvPercent = abvPercentFromUsProof(asWritten(usProofFromAbvPercent(value)))
  return { ...percent, abvPercent, unit: 'proof', assumed: ['us_proof'] }
}

/** A spirit as `spirit:` takes it, measured out anew, as strong as before. */
const drinkPart = (portion: NamedPortion): DrinkPart => {
  const { amount, by, atC, sugarGPerL, drink = null } = portion
  return {
    amount: by === 'mass' ? massIs(amount.value) : volumeIs(amount.value, atC),
    strength: strengthIs(portion),
    sweetness: sugarGPerL.value === 0 ? null : sweetnessIs(sugarGPerL.value, sugarGPerL.plusMinus),
    words: drink ?? '',
    typed: portionText(portion),
    strengthTyped: strengthText(portion),
    named: null,
    drink,
  }
}

type Found = FoundPlant | TypedUnknown

const weighed = (massG: number, noun: string): TypedPlant => ({
  amount: massIs(massG),
  kind: null,
  noun,
  typed: `${written(massG)} g ${noun}`,
})

/** What measures a plant, as a line writes it: `2 tsp black tea`, `1 cup raspberries`. */
const MEASURES: { readonly [Kind in PieceKind]?: string } = { teaspoon: 'tsp', cup: 'cup' }

/** Spoken of as its maker spoke of it: `7.5 lemons`, `2 stick of cinnamon`. */
function counted(count: number, unit: string, noun: string): TypedPlant {
  const measure = MEASURES[unit as PieceKind]
  const isKind = measure !== undefined || COUNTED_WITH_OF.includes(unit as PieceKind)
  const piece = isKind || unit === 'each' ? null : (unit as Piece)
  const what = unit === 'each' ? noun : measure === undefined ? `${unit} of ${noun}` : `${measure} ${noun}`
  return {
    amount: { kind: 'count', count, piece, noun, assumed: [] },
    kind: isKind ? (unit as PieceKind) : null,
    noun,
    typed: `${count} ${what}`,
  }
}

function plantGiven(plant: BatchPlant<unknown>, place: number): Found {
  const { id, name, isDried, massG, count, words } = plant
  if (id === null) return findPlantNamed(weighed(massG.value, name), place)
  const botanical = botanicalOf({ id, isDried })
  const saidState = words?.isFormSaid === true || isDried ? botanical.form.state : null
  const found = { botanical, saidState, corrected: false }
  const cut = count === null || words === null || words.unit === null ? null : cutCount(count)
  if (cut === null || words === null || words.unit === null) {
    const noun = saidState === null ? titleOf(botanical) : (words?.noun ?? `dried ${titleOf(botanical)}`)
    const grams = weighedOut(asWritten(massG.value))
    return { ...found, typed: weighed(massG.value, noun), massG: grams, count: null, ofZest: false }
  }
  const typed = counted(cut, words.unit, words.noun)
  const piece = typed.amount?.kind === 'count' ? typed.amount.piece : null
  const ofZest = typed.kind === null && isZest(botanical, piece)
  return { ...found, typed, massG: times(massG, cut / count!), count: cut, ofZest }
}

function plantsGiven(plants: Batch<unknown>['plants']): Given<PlantsRead> {
  const all = plants.map(plantGiven)
  return {
    typed: all.map(({ typed }) => typed.typed).join(' + '),
    is: {
      plants: all.filter((each): each is FoundPlant => 'botanical' in each),
      unknown: all.filter((each): each is TypedUnknown => !('botanical' in each)),
    },
  }
}

const spiritsGiven = (spirits: readonly NamedPortion[]): Given<readonly DrinkPart[]> => ({
  typed: spirits.map(portionText).join(' + '),
  is: spirits.map(drinkPart),
})

export const percentGiven = (abvPercent: number): Given<Strength> => ({
  typed: `${written(abvPercent)}%`,
  is: percentIs(abvPercent),
})

export const sweetnessGiven = (sugarGPerL: number): Given<Sweetness> => ({
  typed: `${written(sugarGPerL)} g/L`,
  is: sweetnessIs(sugarGPerL),
})

export const bottlesGiven = (bottles: Batch['bottles']): Given<readonly Bottles[]> => ({
  typed: bottles
    .map(
      ({ count, volumeMl }) =>
        `${count === null ? '' : `${count} x `}${sizeTold(volumeMl) ?? `${written(volumeMl)} ml`}`,
    )
    .join(' + '),
  is: bottles.map(({ count, volumeMl }) => {
    const size = sizeTold(volumeMl) === null ? volumeIs(volumeMl) : sizeOf(volumeMl)
    return { count, volumeMl: size.volumeMl, size }
  }),
})

const sugarGiven = (sweetenings: Batch['sweetenings'], sweetener: Batch['sweetener']): Given<SugarRead> => ({
  typed: sugarWritten(sweetenings, sweetener),
  is: {
    amounts: sweetenings.map(({ material, massG }) => ({ ...massIs(massG.value), material })),
    sweetener: sweetener ?? null,
  },
})

/** So many days, at least one. */
export const wholeDaysGiven = (days: number): Given<Span> => {
  const typed = `${days} ${days === 1 ? 'day' : 'days'}`
  return { typed, is: parseDays(typed) }
}

/** How long plants steep that are not in the catalogue; `typed` is how that was said, for showing. */
const daysGiven = (span: NonNullable<Batch['named']['steepFor']>, typed: string): Given<Span> => ({
  typed,
  is: { kind: 'span', ...span, unit: 'days', assumed: [] },
})

/**
 * A batch as the options that begin it: what is weighed or poured is measured out anew. `daysTyped` is how long its maker said that
 * plants steep of which the catalogue knows nothing.
 */
export function batchOptions(batch: Batch<unknown>, daysTyped: string | undefined) {
  const { plants, spirits, sweetenings, sweetener, filler, targets, bottles, named } = batch
  return {
    of: asOptionProblem('of', () => plantsGiven(plants)),
    spirit: spiritsGiven(spirits),
    ...((isSweetened(sweetenings) || sweetener !== undefined) && {
      sugar: sugarGiven(joinSweetenings(sweetenings), sweetener),
    }),
    ...(filler !== undefined && { water: { typed: writeSweetener(filler), is: filler } }),
    ...(targets !== null && {
      'to-strength': percentGiven(targets.abvPercent),
      'to-sweetness': sweetnessGiven(targets.sugarGPerL),
    }),
    ...(bottles.length > 0 && { bottles: bottlesGiven(bottles) }),
    ...(named.steepAtPercent !== null && { 'steep-at': percentGiven(named.steepAtPercent) }),
    ...(named.steepFor !== null && { days: daysGiven(named.steepFor, daysTyped ?? '') }),
    ...(plants.some(({ id }) => id === null) && { 'unknown-ok': { typed: 'yes', is: true } }),
  }
}
