import type { SaidOfHarm, WordSpan } from './said.ts'
import { names } from './victim.ts'

/** How much is taken for another jar; nobody pours a sip or a swig away. */
const MEASURED =
  /^(?:took|taken|taking) .*(?:litres?|liters?|pints?|glass(?:es|ful)?|cup(?:s|ful)?|bowls?|jugs?|flasks?|half (?:a |the )?\w+)$/
const NO_MEASURE = /\b(?:sips?|gulps?|swigs?|mouthfuls?|shots?|slugs?|swallow|drinks?)\b/
/** Words up to where it was taken off: no second deed stands between. */
const OFF = /^(?:(?!(?:and|then|but|before|to|so|from) )\w+ ){0,7}(?:off|aside|away)(?: |$)/
const OUT = /^(?:(?!(?:and|then|but|before|to|so|from) )\w+ ){0,7}(?:out|over to)(?: |$)/
const INTO =
  /^(?:(?!(?:before|to|so|from) )[\w,]+ ){0,8}(?:in|into) (?:\w+ ){1,3}(?:jars?|bottles?|demijohns?|carboys?|jugs?|flasks?|containers?|vessels?|decanters?)(?: |$)/

const STOCK =
  /^(?:got|had|have) .*(?:litres?|liters?|pints?|half (?:a |the )?(?:kilner|jar|demijohn|carboy|jug|bowl|pan|bucket|pot))$/
/** What is to be made of it, asked of a day that is to come. */
const TO_BE_MADE =
  /(?:can|could|may|might|shall|should) (?:i|we) (?:still )?(?:have|make|get|do|start|turn) (?!(?:died?|drunk|swallowed|damaged|poisoned|hurt|killed|been|had|help) )(?:[\w,]+ ){1,8}(?:ready|(?:made|done|finished|bottled) (?:by|for|in time)|by (?:the \w+|christmas|easter|new year|\d))/

/** `Want something for Father’s Day, got a litre of rum`: where a clause begins nobody is told of who got it. */
const BEGINS = /(?:^|[,.;:!?] ?|(?:^| )(?:i|ive|we|weve|ve|and|have|just) ?)$/
const INSIDE = /(?:^| )(?:down|inside|in|into) (?:me|him|her|them|us|you|my|his|their|our)(?: |$)/

/** `Got a litre of vodka, could I have plum and ginger ready by the 20th?`: what there is to steep in. */
export function isStock(said: SaidOfHarm, { from, to }: WordSpan): boolean {
  const own = said.between(from, to)
  if (!STOCK.test(own) || names(said, ['young', 'animal'])) return false
  const before = said.between(Math.max(0, from - 3), from)
  if (own.startsWith('got ') && BEGINS.test(before) && !INSIDE.test(said.between(to, to + 10))) return true
  return TO_BE_MADE.test(`${said.between(0, 60)} `) && !names(said, ['grown', 'adult', 'pronoun'])
}

/** `Took a litre of it off into a jar`: what went into another jar went into nobody. What others take out they may drink. */
export function isDrawnOff(said: SaidOfHarm, { from, to }: WordSpan): boolean {
  if (isStock(said, { from, to })) return true
  const own = said.between(from, to)
  if (!MEASURED.test(own) || NO_MEASURE.test(own) || names(said, ['young', 'animal'])) return false
  const after = said.between(to, to + 14)
  if (INTO.test(after)) return true
  if (names(said, ['grown'])) return false
  return OFF.test(after) || (OUT.test(after) && !names(said, ['adult', 'pronoun']))
}

const WORKED =
  /(?:^| )(?:bottl|strain|filter|pour|shook|shak|sweeten|rack|siphon|press|squeez|stirr|label|imbottigli|filtrat|filtrand|travas|versat|scoss|agitat)\w* (?:[\w,]+ ){0,6}(?:with|while|as|and|con|mentre) (?:\w+ ){0,3}$/

/** `Bottled with my son holding the jar`: a hand that was lent at work. */
export const isLent = (said: SaidOfHarm, { from, to }: WordSpan): boolean =>
  /^(?:holding|took|grabbed|opened) /.test(said.between(from, to)) && WORKED.test(`${said.between(from - 12, from)} `)

const HAVING_SHAKEN = /(?:^| )(?:ho|hai|ha|abbiamo|avete|hanno)(?: (?:gia|anche|appena|ben|sempre|poi|pure))?$/

/** `Agitati tutti i vasi`: shaken, not upset. Italian says both with one word, but is upset (`è agitato`) and has shaken. */
export function isShaken(said: SaidOfHarm, span: WordSpan): boolean {
  if (!/^agitat[oaie]$/.test(said.between(span.from, span.to))) return false
  if (HAVING_SHAKEN.test(said.between(span.from - 2, span.from))) return true
  const isEverything = ({ from, to }: WordSpan) => said.between(from, to) === 'tutti'
  return (
    said.near('vessel', span, 5, 7) &&
    said.mentions().every((mention) => mention.kind === 'self' || mention.kind === 'them' || isEverything(mention))
  )
}

const WHOLE_COLOUR = /^(?:tutto (?:bianco|nero)|everything .*(?:white|dark|black))$/
const POURED =
  /\b(?:versat|versand|aggiunt|aggiungend|diluit|diluend|filtrat|mescolat|(?:mess[oaie]|mettend\w*) (?:\w+ )?(?:acqua|sciroppo|ghiaccio|zucchero|latte|frigo|freezer)|ghiaccio|congelator|freezer|poured|pouring|added|adding|diluted|mixed|stirred|topped)/
/** Somebody's sight, or what somebody drank. */
const SEEN =
  /\b(?:ved\w+|vist[ao]|occh\w+|mi|davanti|intorno|attorno|see|seeing|saw|sight|vision|eyes?|me|my|drink\w*|bere)\b/

/** `È diventato tutto bianco appena ho versato lo sciroppo`: what a drink looks like, not what somebody sees. */
export function isColourOfDrink(said: SaidOfHarm, span: WordSpan): boolean {
  if (!WHOLE_COLOUR.test(said.between(span.from, span.to)) || SEEN.test(said.text)) return false
  const isOfSomebody = names(said, ['young', 'grown', 'adult', 'pronoun', 'animal'])
  if (isOfSomebody || said.spans('swallowed').length + said.spans('partaken').length > 0) return false
  if (POURED.test(said.text)) return true
  return said.spans('since').length === 0 && (said.near('strong', span, 8, 8) || said.near('vessel', span, 8, 8))
}

/** A clause that asks of a thing what it may do, up to the verb. */
const MAY_IT =
  /^(?:(?:so|and|but|or|hi|hello|hey|ok|also|question) )*(?:could|can|would|will|might|may|do|does|what if|is it possible (?:that|for))(?: (?!(?:you|i|we|u|someone|somebody|anyone|anybody|people|help|please|tell|just|has|have|had|be|get|call|because|after|when|and|that|which|now|suddenly|hissing|bulging|swollen|been|was|is) )\w+)+ $/

/** `Could a full glass bottle burst?`: asked over more words than a modal verb right before it. */
export function isAskedOfThing(said: SaidOfHarm, { from, to }: WordSpan): boolean {
  if (!/(?:^| )burst$/.test(said.between(from, to))) return false
  const clause = said.between(0, to).split(/[.,]/).at(-1)!.trim()
  return MAY_IT.test(clause.replace(/burst$/, ''))
}
