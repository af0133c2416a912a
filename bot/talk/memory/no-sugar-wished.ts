import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import { isNoSugar, noSugarText } from '../bits/no-sugar.ts'
import { jarFills } from '../frames/jar-slots.ts'
import type { TalkReading } from '../frames/reading.ts'
import { withOption } from './change-call.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

const NEW = /(?<!\p{L})(?:make|making|do|try|start|another|fare|faccio|facciamo|un altr[oa])(?!\p{L})/iu

const YET = /(?<!\p{L})(?:did(?:n[’' ]?t| not)|have(?:n[’' ]?t| not)|not yet)(?!\p{L})/iu

const bottlesAsked = ({ name }: TalkJar): TalkReading => ({
  kind: 'question',
  call: { command: 'jar bottle', options: { jar: name } },
  about: { kind: 'lacks', option: 'bottles', sample: '1 x 500 ml' },
  choices: [],
  leftOut: [],
})

/**
 * `No sugar, leave it like that`: what was planned is planned without any, and of what is strained only the bottles are left to be
 * filled. Null where nothing of the kind is wished, or of several things at once.
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
  const waiting = runningAmong(jars).filter(({ stage }) => stage === 'strained' || stage === 'steeping')
  const strained = waiting.filter(({ stage }) => stage === 'strained')
  const spoken = jarCalled(call?.options.jar, waiting)
  const jar =
    named?.jar ?? spoken ?? (strained.length === 1 ? strained[0] : waiting.length === 1 ? waiting[0] : undefined)
  if (jar === undefined || !waiting.includes(jar)) return null
  // `I didn’t put sugar in the plum`: so far; how it goes into bottles is asked.
  if (YET.test(sentence.typed.text)) return jar.stage === 'strained' ? bottlesAsked(jar) : null
  // `I want to make a ginger one without sugar` is of another.
  if (jar.stage === 'steeping' && NEW.test(sentence.typed.text)) return null
  const place = jarFills.where(sentence, 'jar note')?.text
  const options = { jar: jar.name, ...(place !== undefined && { where: place }), note: noSugarText(sentence) }
  return callReading({ command: 'jar note', options }, 'record')
}
