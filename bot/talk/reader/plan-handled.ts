import { numberWords } from '../../../core/quantity/read/number-words.ts'
import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { nameBehind } from '../frames/scaled-text.ts'
import { withOption } from '../memory/change-call.ts'
import { isOf } from '../memory/plan-rules.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading } from '../memory/rule.ts'
import { planMeant } from './plan-asked.ts'

const LEAD =
  '(?:(?:and|so|ok|okay|right|then|but|actually|no|nah|well|lets|let us|i want to|i would|id|ill|we|e|ma|allora|anzi|quindi) )*'
const COUNTED: ReadonlyMap<string, number> = new Map([...numberWords, ['single', 1]])
const NUMBER = `\\d{1,3}|${[...COUNTED.keys()].join('|')}`
const UNIT = 'days?|weeks?|months?|giorn[oi]|settiman[ae]|mes[ei]'
const ONLY = 'just|only|for only|for just|solo|soltanto|solamente|no more than|not more than|at most|al massimo'
const STEEP =
  '(?:(?:i |we |you )?(?:steep|soak|infuse|macerate|leave|let|keep|give|take)(?:ing)?|(?:i |we |you |ill |well )?(?:strain|filter|sieve|drain|(?:take|fish|lift|pull|scoop|get)(?: (?:it|them|the \\p{L}+))? out)(?:ing)?(?: (?:it|them|the \\p{L}+|off|out))* after|(?:filtra|cola)(?:l[oiae]|re)?(?: (?:tutto|il \\p{L}+))? dopo|lascia(?:l[oiae]|mol[oiae]|tel[oiae]|re|rl[oiae])?|macera(?:re)?|tenerl[oiae]|tienil[oiae])'
const IT =
  '(?:it|them|that|all|in|to|steep|sit|stand|infuse|soak|for|about|the|lot|li|lo|la|in infusione|per|macerare|circa)'
const OTHERWISE =
  'instead|only|max|maximum|tops|at most|no more|will do|is enough|and thats it|not longer|no longer|please|invece|basta|al massimo|e basta|not two|not more'

/** `Steep just a day`, `only leave it one day`, `solo un giorno`. */
const SO_LONG = new RegExp(
  `^${LEAD}(?:(?<first>${ONLY}) )?(?<steep>${STEEP})?(?: ?${IT})*(?: ?(?<only>${ONLY}))?(?: ?${IT})*(?: (?:for|per))? ?(?:(?<number>${NUMBER}) (?<unit>${UNIT})|(?<night>overnight|a (?:single )?night|(?:one|1|a single) night|una(?: sola)? notte)|(?<hours>24|48|72) (?:hours|hrs|hr|h|ore))(?: (?<otherwise>${OTHERWISE}))*$`,
  'u',
)

const IN_ENGLISH = [
  [/^(?:day|giorn)/, 'day'],
  [/^(?:week|settiman)/, 'week'],
  [/^m/, 'month'],
] as const

const HOURS_A_DAY = 24

/** How long it is to steep, as the option takes it; null where a line says nothing else. */
export function daysSaid(words: string): string | null {
  const found = SO_LONG.exec(words)?.groups
  if (found === undefined || (found.first ?? found.steep ?? found.only ?? found.otherwise) === undefined) return null
  if (found.night !== undefined) return '1 day'
  const hours = found.hours === undefined ? null : Number(found.hours) / HOURS_A_DAY
  const count = hours ?? COUNTED.get(found.number!) ?? Number(found.number)
  const unit = hours !== null ? 'day' : IN_ENGLISH.find(([each]) => each.test(found.unit!))![1]
  return `${count} ${unit}${count === 1 ? '' : 's'}`
}

const I = '(?:i|we|you|one)'
const HANDLED =
  '(?:cut|chop|slice|halve|quarter|peel|skin|wash|rinse|scrub|prick|score|crush|bruise|squash|mash|tear|shred|grate|zest|destone|de stone|deseed|core|top and tail|dry|clean)'
const TRATTATO =
  '(?:tagliar|sbucciar|pelar|lavar|schiacciar|snocciolar|bucherellar|punger|spremer|grattugiar|sminuzzar|pulir)'

/** `Do I cut the walnuts?`, `should they be washed`, `devo sbucciarli?`. */
const PREPARED = new RegExp(
  `^${LEAD}(?:(?:do|should|shall|must|can|how do|how should|would|why do) ${I} (?:need to |have to |got to |want to |ought to |better )?${HANDLED}\\b|(?:do|should|must) (?:they|it|the \\p{L}+(?: \\p{L}+)?) (?:need to |have to |want )?(?:be |being |to be )?(?:cut|chopped|sliced|halved|quartered|peeled|peeling|cutting|washing|skinned|washed|rinsed|pricked|crushed|bruised|whole)|(?:are|is) (?:they|it|the \\p{L}+) (?:put in |in )?(?:cut|whole|halved|quartered|peeled|washed)|(?:cut|whole|peeled)(?: up)? or (?:whole|cut|not|unpeeled)|(?:devo|dobbiamo|bisogna|si deve|si devono|vanno|va|posso|meglio|come si|devono essere) ?(?:${TRATTATO}\\p{L}*|tagliat[eiao]|sbucciat[eiao]|lavat[eiao]|pelat[eiao]|interi|intere))`,
  'u',
)

/** Of stones and kernels that are broken something else is said. */
const STONES = /\b(?:stones?|kernels?|pits?|pips?|noccioli?|semi|crack\p{L}*)\b/u

const OUT = '(?:take|fish|lift|pull|scoop|get|remove|pick|strain|filter|sieve|drain)'
/** `When do I take the nuts out?`, `how long do they stay in`, `quando devo filtrarlo?`. */
const TAKEN_OUT = new RegExp(
  `^${LEAD}(?:when (?:do|should|must|can|will|shall) ${I} (?:have to |need to )?${OUT}(?: (?:it|them|the|that|this|out|off|my|\\p{L}+)){0,5}|when do(?:es)? (?:they|it|the \\p{L}+(?: \\p{L}+)?) (?:come|have to come|need to come|get taken|go) out|how long (?:do|does|should|must|will) (?:they|it|the \\p{L}+(?: \\p{L}+)?) (?:stay|steep|sit|soak|infuse|go|need|have to stay|be)(?: in)?(?: there| it| the jar| the spirit)?|how long (?:do|should) ${I} (?:leave|keep|steep|soak|let|have)(?: (?:it|them|the|in|\\p{L}+)){0,5}|quando (?:devo |posso |dobbiamo |si |lo |la |li |le )*(?:togl|lev|filtr|col|estra|tir)\\p{L}*(?: (?:le|i|la|il|gli|lo|l|via|fuori|\\p{L}+)){0,3}|(?:per )?quanto (?:tempo )?(?:devono|deve|devo|stanno|sta|li|le|lo|la|restano|resta|rimangono)(?: (?:stare|lasci\\p{L}*|restare|tener\\p{L}*|macerare|dentro|in|infusione|li|lo|la|le)){0,4})$`,
  'u',
)

/** `Is 40 % vodka strong enough?`: as strong as spirit is sold in every shop, % vol. */
const STRONG_ENOUGH = /\b(?:strong enough|abbastanza forte)\b/u
const SHOP_PERCENT = { least: 35, most: 50 } as const

const isShopStrength = ({ kind, value }: Sentence['bits'][number]): boolean =>
  (kind === 'strength' || kind === 'spirit') && value >= SHOP_PERCENT.least && value <= SHOP_PERCENT.most

/** The plant of a recipe that is spoken of: one that is named, else the first. */
function plantOf({ options: { of = '' } }: CallRead, { bits }: Sentence): string | null {
  const items = of.split('+').map((item) => item.trim())
  const named = bits.find(({ kind }) => kind === 'plant')
  const item = named === undefined ? items[0] : items.find((each) => isOf(each, named))
  const name = item === undefined ? '' : nameBehind(item)
  return name === '' ? null : name
}

/** What was planned, or begun of it: behind a start the recipe is still spoken of. */
function recipeMeant(said: Remembered): CallRead | null {
  const plan = planMeant(said)
  if (plan !== null) return plan.call
  return said.call?.command === 'jar start' && said.call.options.of !== undefined ? said.call : null
}

/**
 * Behind a plan: `steep just a day`, `do I cut the walnuts`, `when do I take the nuts out`. How long it is to steep changes the plan, how
 * the plant is made ready is the plant's, and when it comes out stands in the plan. Null for everything else.
 */
export function planHandled(sentence: Sentence, said: Remembered): TalkReading | null {
  const { bits, typed } = sentence
  const recipe = recipeMeant(said)
  if (recipe === null || typed.tokens.length > 14) return null
  const words = wordsAlone(typed)
  const days = recipe.command === 'plan' ? daysSaid(words) : null
  if (days !== null) return callReading(withOption(recipe, 'days', days))
  if (STRONG_ENOUGH.test(words) && bits.some(isShopStrength))
    return { kind: 'topic', entry: 'low_strength_peel', more: [] }
  if (bits.some(({ kind, value }) => kind !== 'plant' && kind !== 'date' && value > 0) || STONES.test(words))
    return null
  if (TAKEN_OUT.test(words)) {
    const others = bits.filter(({ kind }) => kind === 'plant')
    if (others.length > 0 && plantOf(recipe, sentence) === null) return null
    return recipe.command === 'jar start' ? null : callReading(recipe)
  }
  const plant = PREPARED.test(words) ? plantOf(recipe, sentence) : null
  return plant === null ? null : callReading({ command: 'botanical', options: { of: plant } })
}
