import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading, whichJar } from '../memory/rule.ts'
import { drinkMeant } from './own-glasses.ts'

const WHAT =
  '(?:it|this|that|mine|the \\p{L}+(?: \\p{L}+){0,2}|my \\p{L}+(?: \\p{L}+){0,2}|lo|la|il \\p{L}+|l \\p{L}+|la \\p{L}+)'
/** `Will the orange freeze`, `does it go solid in the freezer`, `l’arancino gela?`. */
const FREEZES = new RegExp(
  `^(?:(?:and|so|but|e|ma) )*(?:(?:will|does|would|can|could|might|wont|is|should) ${WHAT} (?:going to |really |actually )?(?:freeze|go solid|go slushy|turn to slush|turn to ice|ice up)(?: (?:solid|over|up|hard|in (?:the|a|my|our|your|this) freezer|then|at all))*|(?:${WHAT} )?(?:si congela|gela|congela|ghiaccia|si ghiaccia)(?: (?:${WHAT}|nel (?:mio |nostro )?(?:congelatore|freezer)|in (?:freezer|congelatore)))*|will the freezer freeze ${WHAT})$`,
  'u',
)

/** Past its straining and sweetening: what there is will be drunk. */
const FINISHED: ReadonlySet<TalkJar['stage']> = new Set(['sweetened', 'resting', 'ready'])

/**
 * Whether what was planned, or what is in a jar, freezes: a plan says it with its last day, and of a jar that is finished it
 * follows from its strength and sugar. Null of everything else, and where a jar still steeps.
 */
export function ownFreezing(sentence: Sentence, said: Remembered): TalkReading | null {
  const { bits, typed } = sentence
  if (!FREEZES.test(wordsAlone(typed)) || bits.some(({ kind }) => kind !== 'plant' && kind !== 'jar')) return null
  const meant = drinkMeant(sentence, said)
  if ('plan' in meant) return callReading(meant.plan.call)
  const finished = meant.jars.filter(({ stage, strengthPercent }) => FINISHED.has(stage) && strengthPercent() !== null)
  const calls = finished.map(({ name }) => ({ command: 'jar show', options: { jar: name } }) as const)
  const [call, another] = calls
  if (call === undefined) return null
  if (another !== undefined) return whichJar({ command: 'jar show', options: {} }, calls)
  return { kind: 'call', call, leftOut: [], does: 'compute', leads: { kind: 'freezer' } }
}
