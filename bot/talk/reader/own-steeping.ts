import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsOf, runningAmong } from '../bits/jars-of.ts'
import type { LeadAsked, TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { WORKED_OUT, whichJar } from '../memory/rule.ts'
import { heldIn } from './own-glasses.ts'

/** One of these words has to stand in it. */
const ANY =
  /\b(?:get|make|yield|come|give|fill|end|be|out|in|stay|stays|taste|tasting|try|sample|viene|vengono|verr\p{L}+|esce|escono|ottengo|assagg\p{L}+|tolg\p{L}+|toglier\p{L}*|lev\p{L}+)\b/u

const LEAD = '^(?:(?:and|so|but|ok|okay|then|now|roughly|about|e|ma|allora) )*'
const WHOM = '(?:i|we|you|it|this|that|they|the|my|our|jar|batch|there|thing|one|liqueur|drink)'
const TAIL =
  '(?: (?:out|of|from|in|with|it|this|that|them|mine|the|my|our|one|jar|batch|liqueur|drink|altogether|all|total|together|end|up|at|there|then|please|roughly|about|when|is|its|s|finished|done|da|di|del|dal|dalla|nel|fuori|alla|fine|questo|quello|vaso|thing|name))*$'

const YIELD = new RegExp(
  `${LEAD}(?:how much(?: (?:liqueur|drink|stuff|of it|finished liqueur))?(?: (?:will|do|does|would|can|should|could|is|am|are|going|to|supposed))+(?: ${WHOM})*(?: (?:going|to|expect|supposed))*(?: (?:get|make|yield|come|give|produce|end up with|be|have))(?: ${WHOM})*|how many (?:bottles|litres|cups|pints|quarts)(?: (?:will|do|does|would|can|could|should|is|are|going|to))+(?: ${WHOM})*(?: (?:get|make|yield|come|give|fill|be|have))(?: ${WHOM})*|(?:what(?: is|s| will)?|how(?: big)? is) (?:the|my|its) yield(?: be)?|quanto (?:ne )?(?:liquore )?(?:viene|verra|esce|uscira|ottengo|otterro|faccio)|quante bottiglie (?:ne )?(?:vengono|verranno|escono|ottengo|riempio|faccio))${TAIL}`,
  'u',
)

const NAME = '(?:it|them|they|everything|all|the|my|that|those|these|fruit|spices?|name|peels?|le|li|lo|la|i|gli|il)'
const OUT = new RegExp(
  `${LEAD}(?:when (?:do|should|must|can|will|shall|would) (?:i|we|you) (?:have to |need to )?(?:take|fish|lift|pull|get|remove|pick|scoop)(?: ${NAME})+(?: out| off)?|when (?:do|does|should|must|can) (?:${NAME} ?)+ (?:come|go|be taken|have to come|need to come) out|how long (?:do|does|should|must|will|can) (?:${NAME} ?)+ (?:stay|steep|sit|soak|stand|be|have to stay|need to stay)(?: in)?|how long (?:do|should|can|must) (?:i|we) (?:leave|keep|steep|have)(?: ${NAME})+(?: in)?|do (?:i|we) (?:leave|keep)(?: ${NAME})+ in|do (?:${NAME} ?)+ stay in|quando (?:devo |posso |si |le |li |lo |la )*(?:tolg|toglier|lev)\\p{L}*(?: ${NAME})*)${TAIL}`,
  'u',
)

const TASTING = new RegExp(
  `${LEAD}(?:how (?:often|soon|regularly|frequently) (?:do|should|must|shall|can|would) (?:i|we|you|one) (?:have to |need to )?(?:taste|try|sample|test)(?: ${NAME})*|every how (?:many (?:hours|days)|often|long) (?:do|should) (?:i|we) (?:taste|try)(?: ${NAME})*|how many times (?:a day |a week )?(?:do|should) (?:i|we) (?:taste|try|sample)(?: ${NAME})*|how often (?:is|should) (?:${NAME} ?)+ (?:be )?tasted|when (?:do|should|can|must) (?:i|we) (?:next |first |start )*(?:to )?(?:taste|tasting|try|trying|sample)(?: ${NAME})*|ogni quanto (?:lo |la |li |devo |si |bisogna )*assagg\\p{L}+|quando (?:lo |la |li |devo |si )*assagg\\p{L}+)${TAIL}`,
  'u',
)

const OF_JAR = /^(?:jar|plant|bare|bottles)$/
const MOST_WORDS = 16

/** The jars that may be meant: with what is named in it, begun just now or spoken of last, else all that steep. */
function jarsMeant({ bits, jars }: Sentence, { call, step }: Remembered): readonly TalkJar[] {
  const running = runningAmong(jars)
  const names = bits.filter(({ kind }) => kind === 'jar' || kind === 'plant')
  const among = running.filter((jar) =>
    names.every((bit) => jarsOf(bit, running).includes(jar) || bit.ids?.some((id) => jar.plants.includes(id)) === true),
  )
  const last = call?.command === 'jar start' ? step?.options.jar : call?.options.jar
  const spoken = jarCalled(last, among)
  return spoken === undefined ? among : [spoken]
}

function leadOf(words: string, { stage, plants, volumeMl, told }: TalkJar): LeadAsked | null {
  const thereMl = YIELD.test(words) ? (volumeMl?.() ?? null) : null
  if (thereMl !== null) return { kind: 'yield', thereMl, held: heldIn(stage, told) }
  if (stage !== 'steeping') return null
  if (OUT.test(words)) return { kind: 'taken_out' }
  return TASTING.test(words) ? { kind: 'tasting', isHot: plants.some((id) => id.includes('chilli')) } : null
}

/** `How much will I get out of it`, `when do I take the cloves out`, `how often do I taste it`: of a jar that stands there. Null behind a plan. */
export function ownSteeping(sentence: Sentence, said: Remembered): TalkReading | null {
  const { bits, typed } = sentence
  if (typed.tokens.length > MOST_WORDS || bits.some(({ kind }) => !OF_JAR.test(kind))) return null
  const isAt = (place: number): boolean =>
    bits.some(({ kind, from, to }) => (kind === 'plant' || kind === 'jar') && from <= place && place < to)
  const words = wordsAlone({
    tokens: typed.tokens.map((token, place) => (isAt(place) ? { ...token, text: 'name' } : token)),
  })
  if (!ANY.test(words) || !(YIELD.test(words) || OUT.test(words) || TASTING.test(words))) return null
  if (said.call !== null && WORKED_OUT.test(said.call.command) && said.call.options.jar === undefined) return null
  const found = jarsMeant(sentence, said).flatMap((jar) => {
    const leads = leadOf(words, jar)
    return leads === null ? [] : [{ leads, call: { command: 'jar show', options: { jar: jar.name } } as const }]
  })
  const [only, another] = found
  if (only === undefined) return null
  if (another !== undefined)
    return whichJar(
      { command: 'jar show', options: {} },
      found.map(({ call }) => call),
    )
  return { kind: 'call', call: only.call, leftOut: [], does: 'compute', leads: only.leads }
}
