import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import { DomainError } from '../../core/domain-error.ts'
import type { Story } from '../../core/jar/story.ts'
import { USUAL_BOTTLE_ML } from '../../core/recipe/plan/parse-bottles.ts'
import { writeLine } from '../chat/write-line.ts'
import { bottlesOfLeft } from '../commands/jar/amounts.ts'
import { plannedSyrup, sweetenOptions } from '../commands/jar/planned-syrup.ts'
import type { BottlingFormText, SweeteningFormText } from '../text/en/registration.ts'
import { encodeCustomId } from './custom-id.ts'
import { type Asked, amountFields, type Filled, fitted } from './form.ts'

export const SWEETEN = 'jar sweeten'
export const BOTTLE = 'jar bottle'

type Form = APIModalInteractionResponseCallbackData

const idOf = (path: string, { owner, jarId }: Asked): string =>
  encodeCustomId({ owner, line: writeLine(path, `#${jarId}`), nudgeId: null })!

/** A form for what was stirred in: its fields are called what the options of `/jar sweeten` are. */
export const sweeteningForm = (asked: Asked, text: SweeteningFormText, filled: Filled): Form => ({
  custom_id: idOf(SWEETEN, asked),
  title: fitted(text.title({ name: asked.jarName })),
  components: amountFields(['sugar', 'water'], text, filled),
})

/** A form for the bottles that were filled. */
export const bottlingForm = (asked: Asked, text: BottlingFormText, filled: Filled): Form => ({
  custom_id: idOf(BOTTLE, asked),
  title: fitted(text.title({ name: asked.jarName })),
  components: amountFields(['bottles'], text, filled),
})

/** What was worked out for a strained jar; nothing where that is not known. */
export const sweeteningPlanned = (story: Story): Filled => {
  const planned = plannedSyrup(story)
  return planned === null ? {} : Object.fromEntries(sweetenOptions(planned.syrup))
}

const USUAL = [{ count: null, volumeMl: USUAL_BOTTLE_ML }] as const

/** The bottles as planned, else as many of half a litre as are filled; nothing where not even one is. */
export const bottlingPlanned = (story: Story): Filled => {
  const { bottles } = story.started.plan
  try {
    const filled = bottlesOfLeft(bottles.length === 0 ? USUAL : bottles, story)
    const texts = filled.map(({ count, volumeMl }) => `${count} x ${Number(volumeMl.toPrecision(4))} ml`)
    return { bottles: texts.join(' + ') }
  } catch (error) {
    if (error instanceof DomainError && error.code !== 'internal') return {}
    throw error
  }
}
