import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import {
  distanceFromSyrup,
  type SweetenedWith,
  sweetenedWith,
  syrupToAdd,
} from '../../../../core/jar/state/planned-syrup.ts'
import { sameSweetening } from '../../../../core/jar/state/same-again.ts'
import { isSweetening } from '../../../../core/jar/state/syrup-wanted.ts'
import type { MaterialId } from '../../../../core/quantity/materials.ts'
import { sugarGrams, waterMillilitres } from '../../../../core/quantity/write/made-amounts.ts'
import type { Syrup } from '../../../../core/recipe/solve/syrup.ts'
import { worthAdding } from '../../../../core/recipe/solve/worth-adding.ts'
import { call } from '../../../calls/call.ts'
import type { Given } from '../../../calls/option.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import { signature } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { sweeteningsOf, waterG } from '../../options/input-to-portion.ts'
import { row } from '../../reply/outcome-reply.ts'
import { sweetenedCautions } from '../known/jar-cautions.ts'
import { kitchenAmong } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { syrupValues } from '../known/sweeten-options.ts'
import { bottleActions } from '../step/bottle-actions.ts'
import { type Recorded, recordStep } from '../step/record-step.ts'
import { onceMore } from '../step/repeat-action.ts'
import { becameHeadline, nowRows, stepReply } from '../step/step-reply.ts'
import { clearingNotes } from '../step/strained-reply.ts'
import { sweetenActions } from '../step/sweeten-actions.ts'
import { expectUnbottled } from './expect-unbottled.ts'
import { pourBack, sugarFruit } from './sweeten-fruit.ts'

/** What was worked out, where something else went in. */
function slipNotes({ name }: JarState, syrup: Syrup | null, poured: SweetenedWith): readonly Message<'notes'>[] {
  if (syrup === null) return []
  const distance = distanceFromSyrup(poured, syrup)
  if (distance === 'near') return []
  const { sweetener, filler } = syrup
  const values = {
    name,
    sweetener,
    filler,
    ...worthAdding(syrup),
    isFarOff: distance === 'far_off',
  }
  return [{ group: 'notes', key: 'jar_sweetened_otherwise', values }]
}

/** Puts what was worked out in the place of what is far from it. */
function asPlannedActions(recorded: Recorded, syrup: Syrup | null, context: Context): readonly Action[] {
  if (syrup === null) return []
  const { entry } = recorded
  if (entry.kind !== 'sweetened') return []
  if (distanceFromSyrup(sweetenedWith(entry), syrup) !== 'far_off') return []
  // Nothing cannot be typed: what was not to go in is taken back instead.
  const values = syrupValues(syrup, kitchenAmong(recorded.story, context.settings))
  if (Object.keys(values).length < 2) return []
  const sugar = values.sugar && { ...values.sugar, sweetener: null }
  const correct = call('jar correct', { jar: jarRef(recorded, context), entry: entry.seq, ...values, sugar })
  return [{ label: { group: 'actions', key: 'jar_as_planned', values: undefined }, call: correct }]
}

/** Lacking amounts; the jar's own where they are worked out, of what was named where something was. */
async function lacking(jar: Given<string>, context: Context, sweetener: MaterialId | undefined): Promise<ChatError> {
  const found = findJar(jar.is, (await context.store.read(context.userId)).jars)
  const story = jarStateOf(found.entries)!
  const syrup = isSweetening(story) ? syrupToAdd(story, sweetener) : null
  const own = syrup === null ? {} : syrupValues(syrup, kitchenAmong(story, context.settings))
  if (syrup !== null && Object.keys(own).length > 0) {
    const values = {
      name: story.name,
      sweetener: syrup.sweetener,
      filler: syrup.filler,
      sugarG: syrup.sugarG.value,
      waterMl: syrup.waterMl.value,
      example: lineOf(call('jar sweeten', { jar: story.name, ...own })),
    }
    return new ChatError('missing_option', 'syrup_reckoned', values, { option: 'sugar' })
  }
  const sugar = { amounts: [sugarGrams(450, sweetener)], sweetener: null }
  const example = lineOf(call('jar sweeten', { jar: jar.is, water: waterMillilitres(500), sugar }))
  const values = { command: 'jar sweeten', option: 'sugar', example }
  return new ChatError('missing_option', 'missing_option', values, { option: 'sugar' })
}

/** What to press where nothing was recorded: what the jar wants now, or the same once more. */
function heldActions(recorded: Recorded, input: InputOf<'jar sweeten'>, context: Context): readonly Action[] {
  const { story, held } = recorded
  if (held !== 'same_again') {
    return story.strained !== null && story.ended === null && isSweetening(story)
      ? sweetenActions(recorded, context)
      : []
  }
  return [onceMore('jar sweeten', recorded, input, context)]
}

/** Dry sugar in grams: water would only weaken what is drawn. */
function isOnlySugar({ jar, water, sugar }: InputOf<'jar sweeten'>): boolean {
  if (water === undefined && (sugar?.is.amounts.length ?? 0) > 0) return true
  const dry = { amounts: [sugarGrams(250, sugar?.is.sweetener ?? undefined)], sweetener: null }
  const example = lineOf(call('jar sweeten', { jar: jar.is, sugar: dry, 'on-fruit': true }))
  throw new ChatError('bad_value', 'fruit_dry_sugar', { example }, { option: water === undefined ? 'sugar' : 'water' })
}

export const jarSweetenCommand = defineCommand({
  ...signature('jar sweeten'),
  topic: 'jars',
  async run(input, context) {
    const { water, sugar } = input
    if (input['from-fruit'] !== undefined) return pourBack(input, context)
    if (input['on-fruit']?.is === true && isOnlySugar(input)) return sugarFruit(input, context)
    const sweetener = sugar?.is.sweetener ?? undefined
    if (sweetener !== undefined || (water === undefined && sugar === undefined)) {
      throw await lacking(input.jar, context, sweetener)
    }
    const poured = { waterG: waterG(water), sweetenings: sweeteningsOf(sugar, water) }
    let planned = null as Syrup | null
    const isMeant = input.again?.is ?? false
    const recorded = await recordStep(context, input, {
      happening: (story) => {
        planned = syrupToAdd(story)
        return { kind: 'sweetened', ...poured }
      },
      cautions: sweetenedCautions,
      expect: (before, story) => expectUnbottled(before, story, input),
      sameOn: (story, day) => (isMeant ? undefined : sameSweetening(story, day, sweetenedWith(poured))),
    })
    const { readyOn } = recorded.story
    // What was sweetened before is asked of as a whole.
    const syrup = recorded.unusual.some(({ key }) => key === 'sweetened_again') ? null : planned
    return stepReply(context, input, recorded, {
      headline: becameHeadline(recorded, context),
      actionsHeld: heldActions(recorded, input, context),
      notes: [...slipNotes(recorded.story, syrup, sweetenedWith(poured)), ...clearingNotes(recorded.story)],
      actions: [...asPlannedActions(recorded, syrup, context), ...bottleActions(recorded, context)],
      rows: (view) => [
        ...nowRows(view),
        ...(readyOn === null || view.dangers.length > 0
          ? []
          : [row('jar_ready', { group: 'cells', key: 'jar_ready', values: { day: readyOn } })]),
      ],
    })
  },
})
