import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'

const SHAKING =
  '(?:shak(?:ing|es|e)|swirling|turning the jars?|scuotere|scuoterl[oaie]|scuotiment[oi]|agitare|agitarl[oaie]|scossoni)'
const WHAT =
  '(?:(?:the|any|all|all this|all that|all the|this|that|your|of the|with the|with all the|with|con lo|con gli|con l|di|lo|gli|l) )*'
const IT = '(?: (?:it|them|the jars?|all of them|il vaso|i vasi|il barattolo|i barattoli))?'
const BEHIND =
  '(?: (?:any more|anymore|any longer|now|for now|please|pls|thanks|thank you|then|from now on|reminders?|per favore|grazie|adesso|ora|d ora in poi))*'
const BEFORE = '(?:(?:and|ok|okay|right|please|also|oh|but|so|no|e|ma|anche|poi|allora|per favore) )*'

const WAYS = [
  `(?:no (?:more|further)|enough|thats enough|no|stop|quit|drop|skip|forget|end|cut out|leave out|leave off|done with|im done with|fed up with|had enough of|ive had enough of|without) (?:of )?${WHAT}${SHAKING}`,
  `(?:i |we )?(?:dont|do not|wont|will not|no longer|not) (?:want|wish|need|like|going|plan|mean|intend)? ?(?:to )?(?:be |go on )?(?:shaking|shake)${IT} (?:any ?more|any longer|from now on)`,
  `(?:i |we )?no longer (?:want|wish|need) to shake${IT}`,
  `(?:basta|niente|niente piu|smettiamo|smettiamola|finiamola|nessun|senza) ${WHAT}${SHAKING}`,
  `(?:non (?:voglio|vogliamo|devo|serve|occorre) piu|non ho (?:piu )?voglia di) ${SHAKING}`,
].map((way) => `(?:${way})${IT}${BEHIND}`)

const WHOLE = new RegExp(`^${BEFORE}(?:${WAYS.join('|')})$`)

const wordsBetween = ({ typed }: Sentence, from: number, to: number): string =>
  plainWords(wordsFrom({ ...typed, tokens: typed.tokens.slice(0, to) }, from)).trim()

const isAsked = ({ typed: { tokens } }: Sentence): boolean => tokens.some(({ text }) => text === '?')

const isShakingLeft = (sentence: Sentence, from = 0, to = sentence.typed.tokens.length): boolean =>
  !isAsked(sentence) && WHOLE.test(wordsBetween(sentence, from, to))

/** `No more shaking`, `basta con lo scuotere`: nobody shakes any more, so that no reminder asks for it. */
export const shakingLeft = (sentence: Sentence): TalkReading | null =>
  sentence.bits.length === 0 && isShakingLeft(sentence)
    ? { kind: 'call', call: { command: 'reminders', options: { shake: 'off' } }, leftOut: [], does: 'set' }
    : null

const JOIN = /^(?:and|but|also|then|plus|e|ed|ma|poi|anche|[,;.!])$/

/** `Remind me on Saturday, and no more shaking`: each by itself, the shaking first; null where there is no other of reminders. */
export function shakingApart(sentence: Sentence): readonly string[] | null {
  const { typed, has } = sentence
  const { tokens } = typed
  if (!has('remind', 'put_off', 'given_time', 'until')) return null
  for (let at = 1; at < tokens.length - 1; at++) {
    if (!JOIN.test(tokens[at]!.text)) continue
    const isLeftBehind = isShakingLeft(sentence, at + 1)
    if (!isLeftBehind && !isShakingLeft(sentence, 0, at)) continue
    const [one, other] = [textFrom(typed, 0, at), textFrom(typed, at + 1)]
    return isLeftBehind ? [other, one] : [one, other]
  }
  return null
}
