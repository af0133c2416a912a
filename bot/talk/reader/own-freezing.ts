import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { isOf } from '../memory/plan-rules.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading, whichJar } from '../memory/rule.ts'
import { planMeant } from './plan-asked.ts'

const WHAT =
  '(?:it|this|that|mine|the \\p{L}+(?: \\p{L}+){0,2}|my \\p{L}+(?: \\p{L}+){0,2}|lo|la|il \\p{L}+|l \\p{L}+|la \\p{L}+)'
/** `Will the orange freeze`, `does it go solid in the freezer`, `l’arancino gela?`. */
const FREEZES = new RegExp(
  `^(?:(?:and|so|but|e|ma) )*(?:(?:will|does|would|can|could|might|wont|is|should) ${WHAT} (?:going to |really |actually )?(?:freeze|go solid|go slushy|turn to slush|turn to ice|ice up)(?: (?:solid|over|up|hard|in the freezer|in a freezer|then|at all))*|(?:${WHAT} )?(?:si congela|gela|congela|ghiaccia|si ghiaccia)(?: (?:${WHAT}|nel congelatore|nel freezer|in freezer))*|will the freezer freeze ${WHAT})$`,
  'u',
)

/** Past its straining and sweetening: what there is will be drunk. */
const FINISHED: ReadonlySet<TalkJar['stage']> = new Set(['sweetened', 'resting', 'ready'])

const inFreezer = (jar: TalkJar): CallRead | null => {
  const [abv, sugar] = [jar.strengthPercent(), jar.sugarGPerL?.() ?? null]
  if (abv === null || sugar === null) return null
  return { command: 'blend', options: { parts: `1 l ${abv.toFixed(1)}% ${Math.round(sugar)} g/L` } }
}

/**
 * Whether what was planned, or what is in a jar, freezes: a plan says it with its last day, and of a jar that is finished it follows from
 * its strength and sugar. Null of everything else, and where a jar still steeps.
 */
export function ownFreezing(sentence: Sentence, said: Remembered): TalkReading | null {
  const { bits, typed, jars } = sentence
  if (!FREEZES.test(wordsAlone(typed)) || bits.some(({ kind }) => kind !== 'plant' && kind !== 'jar')) return null
  const running = runningAmong(jars)
  const named = [...new Set(jarsNamed(bits, jars).map(({ jar }) => jar))].filter((jar) => running.includes(jar))
  const plan = planMeant(said)
  const plant = bits.find(({ kind }) => kind === 'plant')
  const isOfPlan = plant === undefined || plan?.call.options.of?.split('+').some((item) => isOf(item, plant)) === true
  if (plan !== null && isOfPlan && (named.length === 0 || plant === undefined)) return callReading(plan.call)
  const last = jarCalled(said.call?.options.jar, running)
  const meant = bits.length > 0 ? named : last !== undefined ? [last] : running.length === 1 ? running : []
  const calls = meant.filter(({ stage }) => FINISHED.has(stage)).flatMap((jar) => inFreezer(jar) ?? [])
  const [call, another] = calls
  if (call === undefined) return null
  return another === undefined ? callReading(call) : whichJar({ command: 'blend', options: {} }, calls)
}
