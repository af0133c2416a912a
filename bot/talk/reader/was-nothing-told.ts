import { wasNothing } from '../../../core/trouble/was-nothing.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { isAsked } from './is-told.ts'

/** As much as is written down of it. */
const MOST_CHARACTERS = 100

const callFor = ({ name }: TalkJar, text: string): CallRead => ({
  command: 'jar note',
  options: { jar: name, was: [...text].length > MOST_CHARACTERS ? 'nothing' : text },
})

/** `False alarm, it’s only pith`, told of a jar that was told of a trouble; null where none was, or it is only asked. */
export function wasNothingTold(sentence: Sentence, text: string): TalkReading | null {
  const troubled = runningAmong(sentence.jars).filter(({ isTroubled }) => isTroubled === true)
  if (troubled.length === 0 || isAsked(sentence) || !wasNothing(text)) return null
  const named = jarsNamed(sentence.bits, sentence.jars).map(({ jar }) => jar)
  const meant = named.length === 0 ? troubled : troubled.filter((jar) => named.includes(jar))
  const [only, ...others] = meant.map((jar) => callFor(jar, text.trim()))
  if (only === undefined) return null
  if (others.length === 0) return { kind: 'call', call: only, leftOut: [], does: 'record' }
  return { kind: 'question', call: only, about: { kind: 'which_jar' }, choices: [only, ...others], leftOut: [] }
}

/** What may come, or is imagined: nothing of it has been seen. */
const SUPPOSED =
  /\b(?:what (?:if|happens (?:if|when)|would happen|(?:do|should|would|must) (?:i|we) do (?:if|when))|suppos(?:e|ing)|imagine|hypothetically|(?:could|might) (?:it|this|that|there|the|my)\b.{0,30}\b(?:go|get|turn|start|grow|become)|how (?:do|would|can|will|could) (?:i|we|you) (?:know|tell|see|spot|notice|recogni[sz]e)|(?:cosa|che cosa|che) (?:succede|succederebbe|faccio|devo fare|farei) (?:se|quando)|e se|potrebbe|come (?:faccio a (?:sapere|capire)|capisco|riconosco|mi accorgo))\b/u

/** A jar of somebody else’s. */
const ANOTHERS =
  /\b(?:neighbou?r|friend|sister|brother|mum|mother|dad|father|aunt|uncle|cousin|gran|grandma|colleague|flatmate) ?s (?:\p{L}+ ){0,2}(?:jar|batch|bottle|one|lemon|liqueur|\p{L}+(?:cello|ino))?|\b(?:del mio|della mia|di mio|di mia) (?:vicin[oa]|amic[oa]|fratello|sorella|madre|padre|zi[oa]|cugin[oa]|collega|nonn[oa])\b/u

const isSupposed = (plain: string): boolean => SUPPOSED.test(plain) || ANOTHERS.test(plain)

/** The same trouble, where it is only supposed, or somebody else’s: nothing of it is kept in a jar. */
export function supposedOnly(reading: TalkReading, text: string): TalkReading {
  if (reading.kind !== 'symptom' || reading.options.jar === undefined || !isSupposed(plainWords(text))) return reading
  return { ...reading, options: { ...reading.options, 'what-if': 'yes' } }
}
