import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, Surroundings } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import { sentenceIn } from '../bits/sentence.ts'

const JOIN = /^(?:and|e|ed|then|poi|but|ma|also|anche|plus|[,;.!])$/

const LED_BY = '(?:(?:i|we|ive|weve|have|then|also|just|please|now|ho|abbiamo|poi|anche) )*'

const PLACE =
  '(?:freezer|fridge|refrigerator|icebox|cellar|basement|cupboard|pantry|closet|larder|garage|window|windowsill|shelf|frigo|frigorifero|congelatore|cantina|dispensa|credenza|armadio|garage)'

/** `Put the vanilla in the freezer`, `take it out of the fridge`, `ho messo il limone in frigo`: where a jar goes. */
const MOVED = `(?:moved?|shifted|put|stuck|stick|popped|stashed|set|took|take|got|get|carried|brought|pulled|pull|messo|metti|mettilo|mettila|spostato|sposta|portato|tolto|togli|tirato)(?: \\p{L}+){0,5} (?:in|into|to|on|of|from|inside|nel|nella|sul|dal|dalla|al)(?: (?:the|my|our|a|il|la|mio|mia))?(?: (?:chest|deep|beer|spare|back|dark|top|bottom))? ${PLACE}`

/** `It's in the freezer now`. */
const STANDS = `(?:its|it is|theyre|they are|they|it|thats|e|sono|stanno|sta) (?:(?:now|all|live|lives|stand|stands|sit|sits|stay|are|down|up|out|back) )*(?:in|on|under|behind|nel|nella|sotto|dietro) (?:(?:the|my|our|il|la|le) )?(?:(?:back|top|bottom|spare) )?(?:${PLACE}|stairs|shed|attic|loft|bed|sink|kitchen|scale|sottoscala|soffitta|cucina)`

const REMINDED = '(?:remind|nudge|ping|ricorda\\p{L}*)'

const HANDLED =
  '(?:shook|shaken|swirled|(?:gave|given)(?: \\p{L}+){1,4} (?:a shake|a swirl|away)|strained|filtered|bottled|tasted|drank|opened|labell?ed|scosso|agitato|filtrato|imbottigliato|assaggiato|bevuto|aperto|regalato)'

/** `Needs another week`, `give it two more weeks`. */
const LET_BE =
  '(?:(?:it|they|still|but|just|lets) )*(?:needs?|wants?|deserves?|could (?:use|do with)|give (?:it|them)|leave (?:it|them)|ha bisogno di|vuole|ci vuole)(?: \\p{L}+)?(?: \\S+){1,3} (?:days?|weeks?|fortnights?|months?|giorn[oi]|settiman[ae]|mes[ei])'

/** The beginning of a clause that tells of a deed of its own, or orders one. */
const OWN = new RegExp(`^${LED_BY}(?:${MOVED}|${STANDS}|${REMINDED}|${LET_BE}|${HANDLED})(?!\\p{L})`, 'u')

const MOST = 4

const MOVES =
  /^(?:(?:i|we|ive|weve|have|then|also|just|now|ho|abbiamo|poi|l|anche) )*(?:moved|shifted|put|popped|stashed|set|took|carried|brought|lugged|stood|stuck|tucked|messo|messa|spostato|spostata|portato|portata)(?!\p{L})/u

/** `Then moved it to the barn`: a verb of moving, and a place behind it in its clause. */
function isMoved({ typed, spans }: Sentence, at: number): boolean {
  if (!MOVES.test(wordsFrom(typed, at))) return false
  const end = typed.tokens.findIndex(({ text }, place) => place > at && JOIN.test(text))
  return spans.some(({ concept, from }) => concept === 'place_word' && from > at && (end === -1 || from < end))
}

/** Where clauses begin that have a deed of their own, behind what joins them to the one before. */
function begins(sentence: Sentence): readonly number[] {
  const { typed } = sentence
  const { tokens } = typed
  return tokens.flatMap((_, at) => {
    const isJoined = at > 1 && JOIN.test(tokens[at - 1]!.text) && !JOIN.test(tokens[at]!.text)
    return isJoined && (OWN.test(wordsFrom(typed, at)) || isMoved(sentence, at)) ? [at] : []
  })
}

/** What is told behind another deed with a deed of its own: `I started 1 lb of plums in a quart of vodka and moved the sloe to the cellar`, clause by clause; null where there is one. */
export function ownDeeds(sentence: Sentence): readonly string[] | null {
  const { typed } = sentence
  const cuts = begins(sentence)
  if (cuts.length === 0 || cuts.length >= MOST) return null
  return [0, ...cuts].map((from, at) => {
    let to = cuts[at] ?? typed.tokens.length
    while (to > from && at < cuts.length && JOIN.test(typed.tokens[to - 1]!.text)) to--
    return textFrom(typed, from, to)
  })
}

/** Whether a sentence says which jar it is of. */
export const isJarNamed = (text: string, surroundings: Surroundings): boolean =>
  jarsNamed(sentenceIn(text, surroundings).bits, surroundings.jars).length > 0

/** The one jar that a sentence names. */
export function jarNamed(text: string, surroundings: Surroundings): string | null {
  const [named, another] = jarsNamed(sentenceIn(text, surroundings).bits, surroundings.jars)
  return named === undefined || another !== undefined ? null : named.jar.name
}
