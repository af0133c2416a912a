import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import { unlessRefused } from '../../../core/domain-error.ts'
import { bottlesOfLeft } from '../../../core/jar/state/jar-bottles.ts'
import type { JarState } from '../../../core/jar/state/jar-state.ts'
import { plannedSyrup } from '../../../core/jar/state/planned-syrup.ts'
import { sizeOf } from '../../../core/quantity/write/made-amounts.ts'
import { writeAmount } from '../../../core/quantity/write/write-quantity.ts'
import { call, invocationOf } from '../../calls/call.ts'
import { type JarAsker, kitchenAmong } from '../../commands/jar/known/jar-kitchen.ts'
import { syrupValues } from '../../commands/jar/known/sweeten-options.ts'
import { usualBottleIn } from '../../commands/options/usual-bottles.ts'
import type { BottlingFormText, StrainingFormText, SweeteningFormText } from '../../text/discord-forms-text.ts'
import type { FilledFields, FormJar } from './form.ts'
import { amountFields, FIELDS, headOf } from './form.ts'

export const STRAIN = 'jar strain'
export const SWEETEN = 'jar sweeten'
export const BOTTLE = 'jar bottle'

type Form = APIModalInteractionResponseCallbackData

/** A form for what came out: nothing has to be filled in. */
export const strainingForm = (asked: FormJar, text: StrainingFormText, filled: FilledFields): Form => ({
  ...headOf(STRAIN, asked, text),
  components: amountFields(FIELDS[STRAIN], text, filled),
})

/** A form for what was stirred in. */
export const sweeteningForm = (asked: FormJar, text: SweeteningFormText, filled: FilledFields): Form => ({
  ...headOf(SWEETEN, asked, text),
  components: amountFields(FIELDS[SWEETEN], text, filled),
})

/** A form for the bottles that were filled. */
export const bottlingForm = (asked: FormJar, text: BottlingFormText, filled: FilledFields): Form => ({
  ...headOf(BOTTLE, asked, text),
  components: amountFields(FIELDS[BOTTLE], text, filled),
})

/** What was worked out for a strained jar; nothing where that is not known. */
export const sweeteningPlanned = (story: JarState, settings: JarAsker['settings']): FilledFields => {
  const planned = plannedSyrup(story)
  if (planned === null) return {}
  return invocationOf(call('jar sweeten', syrupValues(planned.syrup, kitchenAmong(story, settings)))).options
}

const bottlesTyped = ({ count, volumeMl }: { readonly count: number; readonly volumeMl: number }): string =>
  `${count} x ${writeAmount(sizeOf(volumeMl))}`

/** The bottles as planned, else as many of the usual ones as are filled; nothing where not even one is. */
export const bottlingPlanned = (story: JarState, settings: JarAsker['settings']): FilledFields => {
  const usual = [{ count: null, volumeMl: usualBottleIn(kitchenAmong(story, settings)) }]
  const { bottles } = story.started
  const filled = unlessRefused(() => bottlesOfLeft(bottles.length === 0 ? usual : bottles, story))
  return filled === null ? {} : { bottles: filled.map(bottlesTyped).join(' + ') }
}
