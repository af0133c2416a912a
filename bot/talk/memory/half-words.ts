import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

/** Heard, and nothing more. */
const HEARD =
  /^(?:ok|okay|okey|k|right|alright|all right|fine|great|good|perfect|lovely|brilliant|got it|understood|i see|cool|noted|va bene|bene|benissimo|perfetto|capito|d accordo|ottimo)(?: (?:then|ok|cool|great|thanks|ta|cheers|grazie|allora))?$/

const HOW_MUCH = /^(?:(?:and|so|e) )?(?:how (?:much|many)(?: (?:is|was) (?:it|that))?(?: (?:then|again))?|quant[oaie])$/

const HOW_LONG =
  /^(?:(?:and|so|e) )?(?:for )?(?:how long(?: (?:now|then))?(?: (?:should|do|must|shall|will|does|can) (?:i|we|it|you|they)(?: (?:leave|keep|steep|wait|stand|infuse|need|take|let|have to leave|have to wait)(?: (?:it|that|them|this))?(?: (?:for|in|steep|stand|sit|now|then))*)?)?|(?:per )?quanto (?:tempo )?(?:(?:lo|la|li|le) (?:lascio|tengo|devo lasciare|devo tenere)|devo aspettare|ci vuole|deve stare))$/

const ON_AGAIN =
  /^(?:(?:and|now|please) )?(?:(?:turn|switch|put) )?(?:(?:them|it|those) )?(?:(?:back )?on(?: again| now)?|back on)(?: please)?$|^(?:remind me again|start again|resume|di nuovo|riattivali|riaccendili|riprendi)$/

const WHEN_DRUNK =
  /^when (?:can|could|may|will|do|should) (?:i|we|you)(?: be able to)? (?:drink|have|open|try|serve|enjoy|pour)(?: (?:it|them|these|those|that|this|any|some|one))?(?: then)?$|^quando (?:lo|la|li|le) (?:posso|possiamo) (?:bere|aprire|assaggiare|servire)$|^quando (?:posso|possiamo) ber(?:lo|la|li|le)$/

/** What was worked out, or is steeping since, by its own figures. */
const WORKED_OUT = /^(?:plan|again|syrup|mix|dilute|adjust|shopping|cost|serving)$/

/** The jar that was spoken of last. */
const spokenOf = ({ call, step }: Remembered, jars: readonly TalkJar[]): TalkJar | null =>
  jarCalled(call?.options.jar, jars) ?? jarCalled(step?.options.jar, jars) ?? null

const show = (jar: TalkJar): TalkReading => callReading({ command: 'jar show', options: { jar: jar.name } })

function onlyOne(jars: readonly TalkJar[], stages: readonly TalkJar['stage'][]): TalkJar | null {
  const [only, another] = jars.filter(({ stage }) => stages.includes(stage))
  return only === undefined || another !== undefined ? null : only
}

/** When it may be drunk: of the jar spoken of, of the only one that rests, or of them all. */
function whenDrunk(said: Remembered, jars: readonly TalkJar[]): TalkReading | null {
  const running = runningAmong(jars)
  if (running.length === 0) return null
  const jar =
    spokenOf(said, running) ?? onlyOne(running, ['resting', 'ready']) ?? (running.length === 1 ? running[0]! : null)
  return jar === null ? callReading({ command: 'jar list', options: {} }) : show(jar)
}

/** Of a recipe the recipe again, of a jar how it stands; null where neither was spoken of. */
function howLong(said: Remembered, jars: readonly TalkJar[]): TalkReading | null {
  const { call } = said
  if (call !== null && WORKED_OUT.test(call.command)) return callReading(call)
  const running = runningAmong(jars)
  const jar = spokenOf(said, running) ?? onlyOne(running, ['steeping'])
  return jar === null ? null : show(jar)
}

/** A word or two that say nothing by themselves: `how much`, `how long`, `on again`, `ok`. Null for everything else. */
export function halfWords({ typed, bits, jars }: Sentence, said: Remembered): TalkReading | null {
  const words = wordsFrom(typed)
    .replaceAll(/[’',.?!\s]+/gu, ' ')
    .trim()
  if (bits.length > 0) return null
  const { call, question } = said
  if (WHEN_DRUNK.test(words)) return whenDrunk(said, jars)
  if (HOW_LONG.test(words)) return howLong(said, jars)
  if (HOW_MUCH.test(words)) return call !== null && WORKED_OUT.test(call.command) ? callReading(call) : null
  const isPaused = call?.command === 'reminders' && call.options['pause-until'] !== undefined
  if (isPaused && ON_AGAIN.test(words))
    return callReading({ command: 'reminders', options: { 'pause-until': 'none' } }, 'set')
  if (!HEARD.test(words)) return null
  return question ?? { kind: 'small_talk', key: 'right' }
}

const SHOWS: ReadonlySet<CallRead['command']> = new Set(['jar show', 'jar label', 'jar tag'])

/** Of several jars that could be shown, the one spoken of last. */
export function ofJarSpokenOf(
  reading: TalkReading,
  said: Remembered | undefined,
  jars: readonly TalkJar[],
): TalkReading {
  if (said === undefined || reading.kind !== 'question' || reading.about.kind !== 'which_jar') return reading
  if (!SHOWS.has(reading.call.command)) return reading
  const name = spokenOf(said, jars)?.name
  const meant = reading.choices.find(({ options }) => options.jar === name)
  return meant === undefined ? reading : callReading(meant, 'compute', reading.leftOut)
}
