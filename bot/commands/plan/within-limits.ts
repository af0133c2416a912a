import { z } from 'zod'
import type { Botanical } from '../../../core/botanical/botanical.ts'
import type { OverCeiling } from '../../../core/botanical/limits/ceilings.ts'
import { DomainError, unlessRefused } from '../../../core/domain-error.ts'
import { ethanolG } from '../../../core/liquid/liquid.ts'
import { writeSweetener } from '../../../core/quantity/write/write-quantity.ts'
import type { Batch } from '../../../core/recipe/batch.ts'
import { poured } from '../../../core/recipe/code/recipe-wish.ts'
import { botanicalOf, isKnownPlant } from '../../../core/recipe/plan/batch-wish.ts'
import { type FoundPlant, type PlantsRead, readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import { isSweetened, joinSweetenings, timesSweetenings } from '../../../core/recipe/sweetening.ts'
import { checkUnknown } from '../../calls/check-unknown.ts'
import { planShape } from '../../calls/signatures.ts'
import { lineOf } from '../../calls/write-line.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { PieceWeight } from '../../text/messages/limit-problems.ts'
import { spiritPortions } from '../options/input-to-portion.ts'
import { type Planned, planWish, type Setting } from './plan-wish.ts'
import { portionText, sugarWritten, titleOf, weighedText } from './written-amounts.ts'

type Options = Readonly<Record<string, string>>

export const isOver = (error: unknown): error is DomainError<'over_ceiling'> =>
  error instanceof DomainError && error.problem === 'over_ceiling'

/** The plan; of one that passes a limit, the problem says what a piece weighs and names a line that was tried. */
export function orWithinLimits<Result>(
  make: () => Result,
  { of, line }: { readonly of: PlantsRead | undefined; readonly line: (over: OverCeiling) => string | null },
): Result {
  try {
    return make()
  } catch (error) {
    if (!isOver(error)) throw error
    const { values } = error
    const pieces = of === undefined ? [] : piecesOf(of, values)
    throw new ChatError('over_ceiling', 'plan_over_ceiling', { ...values, pieces, line: line(values) })
  }
}

/** What was counted of the plants there is too much of. */
export const piecesOf = ({ plants }: PlantsRead, over: OverCeiling): readonly PieceWeight[] =>
  plants.flatMap(({ botanical: { id, pieces }, count, typed: { amount, kind } }) => {
    if (count === null || amount?.kind !== 'count' || over.of.every((each) => each.id !== id)) return []
    const said = kind ?? amount.piece
    const found = pieces.find(({ piece }) => piece === said) ?? pieces[0]
    return found === undefined ? [] : [{ id, piece: found.piece, minG: found.minG, maxG: found.maxG }]
  })

/** Grams that can be weighed out, never more than these; null where that is nothing. */
export function gramsAtMost(massG: number): string | null {
  const step = massG < 1 ? 0.01 : massG < 10 ? 0.1 : 1
  const most = Math.floor(massG / step + 1e-9) * step
  return most < step ? null : String(Number(most.toFixed(2)))
}

/** How the plant is written beside grams: as it was called, where that needs no piece, or by the catalogue. */
function nounOf(botanical: Botanical, called: readonly string[]): string {
  const { names, form } = botanical
  const nouns = [...called, ...names.en, titleOf(botanical)]
  return [...nouns, ...nouns.map((noun) => `${form.state} ${noun}`)].find((noun) => isNamed(noun, botanical)) ?? ''
}

function isNamed(noun: string, { id, form }: Botanical): boolean {
  const [found] = unlessRefused(() => readPlants(`1 g ${noun}`).plants) ?? []
  return found?.botanical.id === id && found.botanical.form.state === form.state
}

/** The same plants with at most so much of each, g; null where one of them would be nothing. */
export function withAtMost({ plants, unknown }: PlantsRead, mostG: (plant: FoundPlant) => number | null) {
  const parts = plants.map((plant) => {
    const most = plant.massG === null ? null : mostG(plant)
    if (most === null) return plant.typed.typed
    const grams = gramsAtMost(most)
    return grams === null ? null : `${grams} g ${nounOf(plant.botanical, [plant.typed.noun])}`
  })
  if (parts.includes(null)) return null
  return [...parts, ...unknown.map(({ typed }) => typed.typed)].join(' + ')
}

/** As much as the limit allows, and no more than anybody uses. */
const asAllowed =
  ({ of, spiritMl }: OverCeiling) =>
  ({ botanical: { id, dose } }: FoundPlant): number | null => {
    const found = of.find((each) => each.id === id)
    return found === undefined ? null : Math.min(found.mostG, (dose.maxGPerL * spiritMl) / 1000)
  }

const typedOptions = (input: object): Options =>
  Object.fromEntries(
    Object.entries(input).flatMap(([option, given]) => {
      const typed = (given as { readonly typed?: unknown } | undefined)?.typed
      return typeof typed === 'string' ? [[option, typed] as const] : []
    }),
  )

const reading = z.object(planShape).superRefine(checkUnknown)

/** As many limits as may be passed at once. */
const MOST_ROUNDS = 5

/** What of the options a plan takes, with less of what there is too much of; null where nothing was found that is planned. */
function lessOf(options: Options, setting: Setting): Options | null {
  let tried = options
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const known = Object.entries(tried).filter(([option]) => Object.hasOwn(planShape, option))
    const read = reading.safeParse(Object.fromEntries(known))
    if (!read.success || read.data.of === undefined) return null
    const { of } = read.data
    try {
      plan(planWish({ ...read.data, of }, setting))
      return tried
    } catch (error) {
      const less = isOver(error) ? withAtMost(of.is, asAllowed(error.values)) : null
      if (less === null) return null
      tried = { ...tried, of: less }
    }
  }
  return null
}

/** The line that was typed, with as much of its plants as is fine. */
export function lineWithLess(input: Planned, setting: Setting): string | null {
  const less = lessOf(typedOptions(input), setting)
  return less === null ? null : lineOf({ path: setting.command, options: less })
}

/** What a code tells, written out, with as much of its plants as is fine. */
export function lineInsteadOfCode(batch: Batch, input: Planned, setting: Setting): string | null {
  const { from: _, ...typed } = typedOptions(input)
  const own = batch.spirits
  const { spirit } = input
  const spirits = spirit === undefined ? own : spiritPortions(spirit.is, input.strength)
  const factor = ethanolG(poured(spirits)) / ethanolG(poured(own))
  const less = lessOf(
    {
      ...typed,
      of: batch.plants
        .filter(isKnownPlant)
        .map((plant) => `${weighedText(factor * plant.massG.value)} g ${nounOf(botanicalOf(plant), [])}`)
        .join(' + '),
      spirit: typed.spirit ?? own.map(portionText).join(' + '),
      ...(batch.filler !== undefined && { water: writeSweetener(batch.filler) }),
      ...((isSweetened(batch.sweetenings) || batch.sweetener !== undefined) && {
        sugar: sugarWritten(timesSweetenings(joinSweetenings(batch.sweetenings), factor), batch.sweetener),
      }),
    },
    setting,
  )
  return less === null ? null : lineOf({ path: setting.command, options: less })
}
