import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading, WORKED_OUT, whichJar } from '../memory/rule.ts'

const ENOUGH = /enough|abbastanza/i

const WHAT = '(?:it|this|that|mine|(?:the|my|our) \\p{L}+(?: \\p{L}+){0,2}|lo|la|il \\p{L}+|l \\p{L}+|la \\p{L}+)'

const asked = (of: string, end: string): RegExp =>
  new RegExp(
    `^(?:(?:and|so|but|ok|e|ma) )*(?:(?:is|will|are|would) ${WHAT} (?:be |really |now )?(?:${of}) enough(?: now| yet| already| for us| for me| like that)?|(?:e |sara )?(?:${WHAT} )?(?:e |sara )?abbastanza (?:${of}))${end}$`,
    'u',
  )

const SWEET = 'sweet|dolce'
const STRONG = 'strong|forte|alcolic[oa]'
const TASTE = asked(`${SWEET}|${STRONG}`, '')
const FREEZER = asked(
  STRONG,
  ' (?:for|in|not to freeze in|to go in|to pour from|to stand|per) (?:the |a |my |our |il )?(?:freezer|congelatore)',
)
const KEEPING = asked(STRONG, ' (?:to (?:keep|last|be safe|store)\\b.*|per (?:conservarsi|durare|mantenersi))')

/** Past its straining and sweetening: what there is will be drunk. */
const FINISHED: ReadonlySet<TalkJar['stage']> = new Set(['sweetened', 'resting', 'ready'])

/**
 * `Is it sweet enough?`, `is the plum strong enough for the freezer?`: of a jar that has its syrup, how it is, what a freezer makes of
 * it, or how long it keeps. One that waits for its syrup shows that. Null of everything else, and of what was only worked out.
 */
export function enoughAsked(sentence: Sentence, { call: last }: Remembered): TalkReading | null {
  const { bits, typed, jars } = sentence
  if (!ENOUGH.test(typed.text) || bits.some(({ kind }) => kind !== 'plant' && kind !== 'jar')) return null
  const words = wordsAlone(typed)
  const isKeeping = KEEPING.test(words)
  const lead = TASTE.test(words) ? 'enough' : FREEZER.test(words) ? 'freezer' : null
  if (lead === null && !isKeeping) return null
  if (bits.length === 0 && last !== null && WORKED_OUT.test(last.command) && last.options.jar === undefined) return null
  const running = runningAmong(jars)
  const spoken = jarCalled(last?.options.jar, running)
  const named = [...new Set(jarsNamed(bits, running).map(({ jar }) => jar))]
  const past = running.filter(({ stage }) => stage !== 'steeping')
  const meant = bits.length > 0 ? named : spoken === undefined ? past : [spoken]
  const callFor = ({ name: jar, stage }: TalkJar): CallRead => {
    if (isKeeping) return { command: 'keeping', options: { jar } }
    return { command: stage === 'strained' && lead === 'enough' ? 'syrup' : 'jar show', options: { jar } }
  }
  const [jar, another] = meant
  if (jar === undefined) return null
  if (another !== undefined) return whichJar({ command: 'jar show', options: {} }, meant.map(callFor))
  const call = callFor(jar)
  return lead === null || !FINISHED.has(jar.stage) || call.command !== 'jar show'
    ? callReading(call)
    : { kind: 'call', call, leftOut: [], does: 'compute', leads: { kind: lead } }
}
