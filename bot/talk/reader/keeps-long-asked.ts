import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarCalled, runningAmong } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading } from '../memory/rule.ts'
import { planMeant } from './plan-asked.ts'

const IT = '(?:it|this|that|they|this one|that one|the jar|the drink|the liqueur)'

/** `How long does it keep`, `what’s its shelf life`, `quanto dura`. */
const KEEPS_LONG = new RegExp(
  `^(?:(?:so|and|but|ok|then|e|ma) )*(?:how long (?:will|does|would|do|can|could|should) ${IT} (?:keep|stay good|be good|be ok|stay ok)` +
    `|how long (?:is|s) ${IT} good|whats? (?:is )?(?:its|the) shelf life|when (?:will|does|do|would) ${IT} (?:go off|expire)` +
    `|how long (?:can|could|may|should) (?:i|we) keep ${IT}|(?:per )?quanto (?:tempo )?(?:si conserva|si mantiene|si tiene)|quando scade)` +
    '(?: (?:for|now|then|once bottled|when its bottled|poi|ancora))*$',
  'u',
)

/** Said of a jar as well as of how long a plan takes. */
const LASTS = new RegExp(
  `^(?:(?:so|and|but|ok|e|ma) )*(?:how long (?:will|does|would) ${IT} last|quanto (?:tempo )?(?:dura|durera))(?: (?:for|then|poi|ancora))*$`,
  'u',
)

/** How long it keeps: the jar spoken of last, or the only one, by its own strength; in general of what was only planned. Null where it is not asked. */
export function keepsLongAsked({ bits, typed, jars }: Sentence, said: Remembered): TalkReading | null {
  const words = wordsAlone(typed)
  const isKept = KEEPS_LONG.test(words)
  if (bits.length > 0 || !(isKept || LASTS.test(words))) return null
  if (planMeant(said) !== null) return isKept ? { kind: 'topic', entry: 'keep_time', more: [] } : null
  const running = runningAmong(jars)
  const begun = said.call?.command === 'jar start' ? said.step?.options.jar : undefined
  const last = jarCalled(said.call?.options.jar ?? begun, running)
  const isOfOther = said.call !== null && said.call.command !== 'jar start' && !/^jar /.test(said.call.command)
  const meant = last ?? (!isOfOther && running.length === 1 ? running[0] : undefined)
  return meant === undefined ? null : callReading({ command: 'keeping', options: { jar: meant.name } })
}
