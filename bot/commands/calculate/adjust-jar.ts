import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import { ownDrink, ownPercent } from '../../../core/jar/limits/spirit-to-add.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { type StrainedJar, strainedJar } from '../../../core/jar/state/strained-jar.ts'
import { CUP_ML } from '../../../core/quantity/customary.ts'
import { USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { abvPercent as strengthOf } from '../../../core/quantity/measured/precision.ts'
import { kitchenSugar, kitchenWater, percentVol, volumeTyped } from '../../../core/quantity/write/made-amounts.ts'
import { drinksIn } from '../../../core/recipe/drinks-in.ts'
import { fillBottles } from '../../../core/recipe/plan/fill-bottles.ts'
import { strengthAt20 } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { type AdjustedAtHand, adjustAtHand } from '../../../core/recipe/solve/adjust-at-hand.ts'
import { scaleTrial } from '../../../core/recipe/solve/scale-trial.ts'
import { kitchenRounded } from '../../../core/recipe/tool-precision.ts'
import { call } from '../../calls/call.ts'
import type { Given } from '../../calls/option.ts'
import { lineOf } from '../../calls/write-line.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { Context } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import { type Kitchen, kitchenIn, unitsIn } from '../../text/messages/kitchen.ts'
import type { Message } from '../../text/words.ts'
import { dangerCautions, expectDrinkableJar } from '../jar/known/jar-dangers.ts'
import { jarBrief } from '../jar/known/jar-data.ts'
import { kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { afterNow, jarRef } from '../jar/known/jar-ref.ts'
import { viewOf } from '../jar/known/view-of.ts'
import { withLowAcid } from '../reply/low-acid-cautions.ts'
import { trialIn } from './adjust-glass.ts'
import { type AdjustInput, adjustReply } from './adjust-reply.ts'

type OfJar = AdjustInput & { readonly jar: Given<string> }

/** Glasses to try it in, ml: the first in which whole grams tell it, to a twentieth. Common practice, no source. */
const GLASSES_ML = [50, 100, 200]

/** The same in a kitchen that pours in cups: a quarter of one, a half and a whole. */
const US_GLASSES_ML = [CUP_ML / 4, CUP_ML / 2, CUP_ML]
const LEAST_MEASURED = 2
const ROUNDED_SHARE = 0.05

/** What no spirit puts right. */
const NOT_MENDED: readonly DangerKind[] = ['refused_plant', 'refused_spirit', 'unknown_plant', 'to_throw_away']

async function heldIn(input: OfJar, { store, userId }: Context): Promise<StrainedJar> {
  const other = (['liqueur', 'strength', 'sweetness'] as const).find((option) => input[option] !== undefined)
  if (other !== undefined)
    throw new ChatError('too_many_options', 'jar_or_liqueur', { option: other }, { option: other })
  const held = strainedJar(findJar(input.jar.is, (await store.read(userId)).jars))
  // Spirit is what puts right what is too weak or over its ceiling; nothing puts right a poison.
  expectDrinkableJar(held.story, ({ kind }) => NOT_MENDED.includes(kind))
  return held
}

/** As pleased in a glass, or as is wished for. */
function solved(input: OfJar, { story, infusion }: StrainedJar): AdjustedAtHand {
  const { 'to-strength': toStrength, 'to-sweetness': toSweetness, 'spirit-strength': spiritStrength } = input
  const trial = trialIn(input)
  if (trial !== null) {
    const spiritAbv = trial.spirit === null ? null : exactly(strengthAt20(valuesOf(trial.spirit)))
    return { adjustment: scaleTrial({ liqueur: infusion, trial }), spiritAbv, isSpiritAssumed: false }
  }
  if (!toStrength && !toSweetness) {
    const example = lineOf(call('adjust', { jar: input.jar, 'to-strength': percentVol(30) }))
    throw new ChatError('missing_option', 'adjust_to_what', { jar: story.name, example }, { option: 'to-strength' })
  }
  const wish = { abvPercent: toStrength?.is.abvPercent ?? null, sugarGPerL: toSweetness?.is.sugarGPerL ?? null }
  const said = spiritStrength === undefined ? null : strengthOf(spiritStrength.is, 'label')
  return adjustAtHand(infusion, wish, { said, ownPercent: ownPercent(story) }, input.sugar?.is ?? USUAL_MATERIAL)
}

/** What is in it then, as one entry. */
function doneActions(
  { jar, story }: StrainedJar,
  { adjustment, spiritAbv }: AdjustedAtHand,
  kitchen: Kitchen,
  context: Context,
): readonly Action[] {
  const { volume, mass } = unitsIn(kitchen)
  const { spiritMl, waterMl, sugarG, sweetener } = adjustment
  const drink = spiritAbv === null ? null : ownDrink(story, spiritAbv.value)
  const strength = `${drink === null ? '' : `${drink} `}${spiritAbv?.value ?? ''}%`
  const spirit =
    spiritAbv === null || spiritMl.value === 0
      ? null
      : drinksIn(`${volumeTyped(kitchenRounded(spiritMl.value), volume)} ${strength}`, { blends: false })
  const values = {
    ...(spirit !== null && { spirit }),
    ...(waterMl.value > 0 && { water: kitchenWater(kitchenRounded(waterMl.value), null, volume) }),
    ...(sugarG.value > 0 && { sugar: [kitchenSugar(kitchenRounded(sugarG.value), sweetener, mass)] }),
  }
  if (Object.keys(values).length === 0) return []
  const ref = jarRef({ jar, story }, context)
  const done = call('jar add', { jar: ref, ...values, ...afterNow(jar.entries, context.place) })
  return [{ label: { group: 'actions', key: 'adjust_done', values: undefined }, call: done }]
}

/** The same for a glass of it, in amounts that a kitchen can measure; nothing where the glass would be too large. */
function tryNotes(
  { contents, story }: StrainedJar,
  { adjustment, spiritAbv }: AdjustedAtHand,
  kitchen: Kitchen,
): readonly Message<'notes'>[] {
  const { spiritMl, waterMl, sugarG, sweetener } = adjustment
  const share = (glassMl: number): number => glassMl / contents.outcome.volumeMl.value
  const most = Math.max(spiritMl.value, waterMl.value, sugarG.value)
  const isMeasured = (each: number): boolean => most * share(each) >= LEAST_MEASURED
  const isNear = (each: number): boolean =>
    Math.abs(Math.round(most * share(each)) - most * share(each)) <= ROUNDED_SHARE * most * share(each)
  const large = (unitsIn(kitchen).volume === 'us' ? US_GLASSES_ML : GLASSES_ML).filter(isMeasured)
  const glassMl = large.find(isNear) ?? large.at(-1)
  if (glassMl === undefined) return []
  const [spirit, water, sugar] = [spiritMl, waterMl, sugarG].map(({ value }) => Math.round(value * share(glassMl)))
  const spiritPercent = spiritAbv?.value ?? null
  const drink = spiritPercent === null ? null : ownDrink(story, spiritPercent)
  const values = { glassMl, spiritMl: spirit!, spiritPercent, drink, waterMl: water!, sugarG: sugar!, sweetener }
  return [{ group: 'notes', key: 'adjust_try', values }]
}

function bottleNotes({ story }: StrainedJar, { adjustment }: AdjustedAtHand): readonly Message<'notes'>[] {
  const sizes = story.started.bottles.map(({ volumeMl }) => ({ count: null, volumeMl }))
  const { bottles, leftoverMl } = fillBottles(adjustment.outcome.volumeMl.value, sizes)
  const filled = bottles.filter(({ count }) => count > 0)
  return filled.length === 0 ? [] : [{ group: 'notes', key: 'adjust_bottles', values: { bottles: filled, leftoverMl } }]
}

/** Less of it than this share of the jar no jug tells. Source: a jug's 2 % of what is poured, of a fifth of the jar. */
const LEAST_SHARE = 0.004

const NOTHING = exactly(0)

/** Nothing where all of it is too little to be worth a spoon. */
function worthwhile(atHand: AdjustedAtHand, { contents }: StrainedJar): AdjustedAtHand {
  const { adjustment } = atHand
  const { spiritMl, waterMl, sugarG } = adjustment
  const leastMl = LEAST_SHARE * contents.outcome.volumeMl.value
  if ([spiritMl, waterMl, sugarG].some(({ value }) => value >= leastMl)) return atHand
  const none = { spiritMl: NOTHING, waterMl: NOTHING, waterG: NOTHING, sugarG: NOTHING }
  return { ...atHand, adjustment: { ...adjustment, ...none, outcome: contents.outcome } }
}

/** A jar is put right by its own numbers: what to add, tried in a glass first, recorded as one entry once it is in. */
export async function adjustJar(input: OfJar, context: Context): Promise<Reply> {
  const held = await heldIn(input, context)
  const atHand = worthwhile(solved(input, held), held)
  const { adjustment, spiritAbv, isSpiritAssumed } = atHand
  const alone = adjustReply(input, { liqueur: held.infusion, adjustment, spiritAbv }, false, context)
  const reply = withLowAcid(alone, held.story, [adjustment.outcome])
  const view = viewOf(held.jar, context)!
  const isTrial = input.glass !== undefined
  const kitchen = kitchenOfJar(input, held.story)
  return {
    ...reply,
    kitchen,
    table: inMore(reply.table),
    notes: [
      ...bottleNotes(held, atHand),
      ...(isTrial ? [] : tryNotes(held, atHand, kitchenIn(context.settings.units, kitchen))),
      ...(isSpiritAssumed && adjustment.spiritMl.value > 0 && spiritAbv !== null
        ? [
            {
              group: 'notes',
              key: 'adjust_own_spirit',
              values: {
                spiritPercent: spiritAbv.value,
                drink: ownDrink(held.story, spiritAbv.value),
                line: call('adjust', { ...input, 'spirit-strength': percentVol(95) }),
              },
            } as const,
          ]
        : []),
      ...inMore(reply.notes),
    ],
    cautions: [...inMore(dangerCautions([held.story])), ...reply.cautions],
    actions: doneActions(held, atHand, kitchenIn(context.settings.units, kitchen), context),
    data: { ...reply.data, jar: jarBrief(view), spiritAbvPercent: spiritAbv?.value ?? null },
  }
}
