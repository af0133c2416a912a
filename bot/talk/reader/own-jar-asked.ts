import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsOf, runningAmong, waitingForSyrup } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { WORKED_OUT, whichJar } from '../memory/rule.ts'

/** What is said around both questions; any other word makes another one. */
const SMALL =
  /^(?:so|and|now|ok|then|please|i|we|its|ive|well|you|one|it|this|that|the|jar|batch|thing|one|my|our|can|could|may|do|does|should|will|would|is|be|to|for|in|on|of|until|till|before|soon|at|last|finally|actually|need|have|has|add|put|use|goes|go|take|much|il|lo|la|l|le|si|puo|posso|possiamo|potro|sara|e|di|per|a|da|ora|devo|dobbiamo|serve|servono|ci|va|vuole|nel|nella|mettere|aggiungere|metto|aggiungo|quel|quello|questo|vaso|later|after|afterwards|then|going|want|wants|take|takes|get|gets|many|cups|dopo|poi|servira|serviranno|vorra|tanto|tanta|strained|straining|once|when|after|filtrato|dopo|stir|stirred|mix)$/

const DRUNK =
  /^(?:when|how|long|quando|tra|fra|quanto|drink|drinkable|drunk|ready|bere|bevo|beviamo|berlo|berla|bevibile|pronto|pronta)$/
const IS_DRUNK =
  /^(?:when|how soon|how long (?:until|till|before)|quando|(?:tra|fra) quanto)\b.*\b(?:drink|drinkable|drunk|bere|bevo|beviamo|berlo|berla|bevibile)\b/

/** `When’s the lemon ready`: of a jar that is named. */
const READY =
  /^(?:when|whens|whenll|s|ll|are|how|soon|long|drink|drinkable|ready|done|finished|going|quando|fra|tra|quanto|saranno|sono|bere|pront[oaie]|finit[oaie])$/
const IS_READY =
  /^(?:(?:so|and|ok|now|e) )*(?:when(?:s|ll)?|how (?:soon|long (?:until|till|before))|quando|(?:fra|tra) quanto)\b.*\b(?:ready|done|finished|pront[oaie])\b/

const SYRUP = /^(?:mi|quant|how|what|which|whats|quanto|quanta|che|quale|sugar|water|syrup|zucchero|acqua|sciroppo)$/
const THING = '(?:sugar|water|syrup|zucchero|acqua|sciroppo)'
const IS_SYRUP = new RegExp(
  String.raw`^(?:(?:so|and|now|ok|e) )*(?:(?:how much|how many \p{L}+ of|quanto|quanta) (?:of the )?${THING}\b|(?:the )?${THING} (?:and|e) (?:the )?${THING}$|(?:lo |l |la )?${THING} quant(?:o|a|i|e)?\b|(?:what|which|che|quale) (?:syrup|sciroppo)\b|whats? (?:is |s )?the ${THING} (?:for (?:it|this|that)|then|now)$|(?:what|cosa|che) .*\b(?:for|in|per) (?:the |its |lo )?(?:syrup|sciroppo)$)`,
  'u',
)

const SUGAR = /^(?:white |caster )?(?:sugar|zucchero)$/i

/** What comes out, what is in, how long to go: of a batch that was worked out its answer says so, of a jar the jar does. */
const OUTCOME =
  /^(?:how|strong|sweet|boozy|alcoholic|very|quite|long|many|bottles|litres|days|weeks|months|longer|get|make|makes|have|come|comes|turn|turns|out|end|up|with|left|go|got|going|been|fill|fills|yield|whats|what|went|again|there|inside|remind|me|there|quant[oaie]|forte|dolce|bottiglie|giorni|verra|verranno|viene|vengono|fa|manca|mancano|ancora|cosa|che|dentro|c)$/
const IS_OUTCOME =
  /^(?:(?:so|and|but|ok|then|remind me|e|ma) )*(?:how (?:strong|sweet|boozy|alcoholic) (?:is|s) (?:it|this|that)\b|(?:is|s) (?:it|this|that) (?:very |quite )?(?:strong|boozy|alcoholic)$|how (?:strong|sweet|much|many bottles|many litres) (?:will|does|would|do|should) (?:it|this|that|they|i|we|there)\b|how (?:long|many days|many weeks|much longer)\b.*\b(?:left|to go|has (?:it|this|that) got|longer)\b|what(?:s| is| was| went) (?:in(?:side)?|went in) (?:it|this|that|there)\b|quanto (?:sara |viene |verra )(?:forte|dolce)|quante bottiglie (?:fa|verranno|vengono)|quanti giorni mancano|cosa c e dentro)/

/** `When do I strain it`, `bottle it`, `tra quanto lo filtro`: what is next with it and when. */
const TURN =
  /^(?:when|how|soon|long|quando|fra|tra|quanto|till|until|before|strain\p{L}*|filter\p{L}*|bottle|out|come|filtr\p{L}+|col(?:o|are|arlo|arla|iamo)|imbottigli\p{L}+|tolgo|togliere|togliamo|bucc[ea]|scorz[ea]|frutta|le|fruit|peel|peels)$/u
const IS_TURN =
  /^(?:(?:so|and|but|ok|now|e|ma) )*(?:(?:when|how soon|how long (?:until|till|before)) (?:do|can|should|must|could|shall|may)? ?(?:i|we) (?:have to )?(?:strain|filter|bottle|take)\b|(?:bottle|strain|filter) (?:it|them|this|that)(?: (?:now|then))?$|(?:quando|(?:tra|fra) quanto) (?:lo |la |li |le |si )?(?:devo |posso |possiamo |dobbiamo )?(?:filtr|colo|cola|coliamo|imbottigl|tolgo|toglier|togliam))/u

/** `Show raspberry`, `what should I do with the plums?`: how it stands, and what is next. */
const SHOWN =
  /^(?:show|see|view|mostra|mostrami|vedi|what|whats|how|me|do|next|with|about|to|happens|done|am|supposed|cosa|che|faccio|fare|con|adesso|by|today|then)$/
const IS_SHOWN =
  /^(?:(?:please|so|and|ok|now|e) )*(?:(?:show|see|view|mostra|mostrami|vedi)(?: me)? (?!an? )|what (?:should|do|must|shall|am) (?:i|we) (?:(?:need|have|going|supposed) to )?(?:now |next )?do (?:now |next )?(?:with|about|to) (?:the|my|our|that|this)\b|(?:what|whats) (?:is |s )?(?:next|now|to (?:do|be done)) (?:with|for) (?:the|my|our)\b|(?:cosa|che cosa) (?:devo fare|faccio|dobbiamo fare|facciamo) (?:(?:adesso|ora) )?(?:con|col|della|del)\b)/

/** `Can I keep the ginger one`, `is the quince still ok`, with nothing told to be wrong with it: whether it keeps at its strength. */
const KEPT =
  /^(?:still|even|safely|keep|keeps|keeping|kept|save|drink|drinkable|use|usable|ok|okay|fine|good|alright|right|all|bad|off|gone|spoil|spoils|spoiled|spoilt|last|lasts|any|longer|more|not|or|throw|bin|chuck|dump|away|out|has|go|yet|by|fridge|freezer|cellar|larder|pantry|cupboard|shelf|shed|garage|frigo|frigorifero|congelatore|cantina|dispensa|scaffale|tiene|tengono|conserva|conservano|mantiene|dura|durano|tener\p{L}*|tenere|ber\p{L}*|usar\p{L}*|conservar\p{L}*|ancora|buon[oaie]|bevibil[ei]|bene|mal[oae]|sempre|sono|andat[oaie]|e|è|o|buttar\p{L}*)$/u
const IS_KEPT =
  /^(?:(?:so|and|but|ok|now|please|e|ma) )*(?:(?:can|could|may|should|shall|do|dare) (?:i|we) (?:(?:even|safely) )?(?:(?:still )?(?:keep|save)|still (?:drink|use))\b|(?:is|are|does|do|will|would|has|have) .*\b(?:still|keep|last|spoiled|spoilt|gone (?:off|bad))\b|is (?:the|my|our|that) .*\b(?:ok|okay|fine|alright|all right)$|(?:posso|possiamo|si puo|devo) (?:ancora )?(?:tener|ber|usar|conservar)\p{L}*|(?:(?:il|lo|la|i|gli|le|e|è|sono|sara) )+.*\bancora (?:buon|bevibil|bene)|(?:il|lo|la|i|gli|le) .*\b(?:si (?:tiene|tengono|conserva|conservano|mantiene)|dura|durano) (?:in|nel|nella|sullo)|(?:e|è|sono) ancora (?:buon|bevibil))/u

/** A jar of one’s own, not the plant: `can I still use ground ginger`; what stands somewhere is the jar too. */
const OWN = /\b(?:the|my|our|that|this|il|lo|la|i|gli|le|mi[oa]|nostr[oa])\b/

const isOnlyOf = ({ typed, bits }: Sentence, words: RegExp): boolean =>
  typed.tokens.every(
    ({ kind, text }, at) =>
      kind === 'sign' || SMALL.test(text) || words.test(text) || bits.some(({ from, to }) => from <= at && at < to),
  )

/** The jars that a sentence may mean: named, or spoken of last, or all that run. */
function jarsAsked({ bits, jars }: Sentence, { call }: Remembered): readonly TalkJar[] {
  const running = runningAmong(jars)
  const named = bits.flatMap((bit) => (bit.kind === 'jar' || bit.kind === 'plant' ? jarsOf(bit, running) : []))
  if (bits.some(({ kind }) => kind === 'jar' || kind === 'plant')) return [...new Set(named)]
  const last = jarCalled(call?.options.jar, running)
  return last === undefined ? running : [last]
}

function ofJars(command: 'jar show' | 'syrup' | 'keeping', meant: readonly TalkJar[]): TalkReading | null {
  const choices = meant.map(({ name }): CallRead => ({ command, options: { jar: name } }))
  const [call, another] = choices
  if (call === undefined) return null
  if (another === undefined) return { kind: 'call', call, leftOut: [], does: 'compute' }
  return whichJar({ command, options: {} }, choices)
}

/** A jar is named that the recipe worked out last is not of. */
const isOtherJar = ({ bits, jars }: Sentence, { options: { of = '' } }: CallRead): boolean =>
  bits.some(
    (bit) =>
      bit.kind === 'jar' ||
      (bit.kind === 'plant' && !of.toLowerCase().includes(bit.text.toLowerCase()) && jarsOf(bit, jars).length > 0),
  )

/** A jar that runs is named. */
const isOfNamed = ({ bits, jars }: Sentence): boolean =>
  bits.some((bit) => (bit.kind === 'jar' || bit.kind === 'plant') && jarsOf(bit, runningAmong(jars)).length > 0)

const BARE = /^(?:(?:and|so|but) )?(?:how (?:much|long|many)|(?:per )?quanto|quanti)$/

/** `How much`, `how long`, with nothing else: what was spoken of last says it. */
function askedAgain({ call }: Remembered): TalkReading | null {
  if (call === null) return null
  const { jar } = call.options
  if (WORKED_OUT.test(call.command)) return { kind: 'call', call, leftOut: [], does: 'compute' }
  return jar === undefined || jar === 'all'
    ? null
    : { kind: 'call', call: { command: 'jar show', options: { jar } }, leftOut: [], does: 'compute' }
}

/**
 * `When can I drink it`, `how much sugar and water`: asked of a jar that stands there, rather than in general. Null for what tells of
 * amounts, or of anything else.
 */
export function ownJarAsked(sentence: Sentence, said: Remembered): TalkReading | null {
  const { bits, typed, jars } = sentence
  if (!bits.every(({ kind }) => /^(?:jar|plant|sugar|water)$/.test(kind))) return null
  const words = wordsAlone(typed)
  const again = BARE.test(words) ? askedAgain(said) : null
  if (again !== null) return again
  const isDrunk = IS_DRUNK.test(words) && isOnlyOf(sentence, DRUNK)
  const isSyrup = IS_SYRUP.test(words) && isOnlyOf(sentence, SYRUP)
  const isReady = IS_READY.test(words) && isOnlyOf(sentence, READY) && isOfNamed(sentence)
  const { call } = said
  const isOutcome = IS_OUTCOME.test(words) && isOnlyOf(sentence, OUTCOME)
  if (isOutcome && !bits.some(({ kind }) => kind === 'jar' || kind === 'plant')) {
    const before = askedAgain(said)
    if (before !== null) return before
  }
  const isTurn = IS_TURN.test(words) && isOnlyOf(sentence, TURN)
  const isShown = IS_SHOWN.test(words) && isOnlyOf(sentence, SHOWN) && isOfNamed(sentence)
  const isKept = IS_KEPT.test(words) && OWN.test(words) && isOnlyOf(sentence, KEPT) && isOfNamed(sentence)
  if (!isDrunk && !isReady && !isSyrup && !isOutcome && !isTurn && !isShown && !isKept) return null
  // `How much sugar does honey have`, `how much sugar goes in a limoncello`: of no jar.
  if (bits.some(({ kind, text, spirit }) => spirit !== undefined || (kind === 'sugar' && !SUGAR.test(text))))
    return null
  const isOfCall = call !== null && call.options.jar === undefined && WORKED_OUT.test(call.command)
  if (isOfCall && !isOtherJar(sentence, call))
    return isSyrup ? { kind: 'call', call, leftOut: [], does: 'compute' } : null
  const meant = jarsAsked(sentence, said)
  if (isKept && !isDrunk && !isReady && !isTurn && !isShown) return ofJars('keeping', meant)
  if (!isSyrup) return ofJars('jar show', meant)
  const isNamed = bits.some(({ kind }) => kind === 'jar' || kind === 'plant')
  // The jar spoken of last is past its syrup: one that waits for it is meant.
  const waiting = waitingForSyrup(meant)
  return ofJars('syrup', waiting.length > 0 || isNamed ? waiting : waitingForSyrup(jars))
}
