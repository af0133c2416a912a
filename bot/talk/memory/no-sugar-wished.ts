import type { Sentence } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import { isNoSugar } from '../bits/no-sugar.ts'
import type { TalkReading } from '../frames/reading.ts'
import { withOption } from './change-call.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

/**
 * `No sugar, leave it like that`: what was planned is planned without any, and of what is strained only the bottles are left to be
 * told. Null where nothing of the kind is wished, or of several things at once.
 */
export function noSugarWished(sentence: Sentence, { call, question }: Remembered): TalkReading | null {
  const { bits, jars } = sentence
  const isOther = bits.some(({ kind }) => kind !== 'sugar' && kind !== 'jar' && kind !== 'plant' && kind !== 'date')
  if (isOther || !isNoSugar(sentence)) return null
  const open = question?.about.kind === 'lacks' && question.call.command === 'plan' ? question.call : call
  const [named, another] = jarsNamed(bits, jars)
  if (open?.command === 'plan' && named === undefined && bits.every(({ kind }) => kind !== 'plant')) {
    const { sugar: _, ...options } = open.options
    return callReading(withOption({ ...open, options }, 'to-sweetness', '0 g/L'))
  }
  if (another !== undefined) return null
  const waiting = runningAmong(jars).filter(({ stage }) => stage === 'strained')
  const spoken = jarCalled(call?.options.jar, waiting)
  const jar = named?.jar ?? spoken ?? (waiting.length === 1 ? waiting[0] : undefined)
  if (jar === undefined || !waiting.includes(jar)) return null
  return {
    kind: 'question',
    call: { command: 'jar bottle', options: { jar: jar.name } },
    about: { kind: 'lacks', option: 'bottles', sample: '1 x 500 ml' },
    choices: [],
    leftOut: [],
  }
}
