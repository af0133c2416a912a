import type { TypedText } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import { isPerson } from '../lexicon/people.ts'
import type { Bit } from './bit.ts'

/** Beside those that are called by what they are. */
const SOMEBODY = /^(?:him|her|hes|shes|im|he|she|i)$/

const COUNTED =
  /^(?:friends|sons|daughters|kids|children|brothers|sisters|neighbours|neighbors|cousins|grandchildren|grandkids|colleagues|flatmates|lads|girls|boys|women|men|ladies|adults|dogs|cats|hens|figli|figlie|amic[hi]e?|amici|fratelli|sorelle|colleghi|coinquilini|nipoti|ragazz[ie]|anni|gatti|cani|galline)$/

/** Between a person and an age: `is`, `turned`, `just turned`. */
const OF_AGE = /^(?:is|are|was|were|am|turns|turned|turning|aged|just|nearly|almost|only|now|already|ha|ho|compie|fa)$/

const WE_ARE = /^(?:were|are|is|was|siamo|eravamo|saremo|sono)$/

const MOST_AGE = 110

/** `My neighbour is 82`, `I’m seventy-eight`: an age, where no unit and nothing that is counted stands behind it. */
function isAge({ tokens }: TypedText, { from, to, value }: Bit): boolean {
  if (value > MOST_AGE || !Number.isInteger(value)) return false
  const behind = tokens[to]?.text ?? ''
  if (!/^(?:|[,.;!?)]|and|but|so|now|today|next|this|on|in|years?|anni|e|ma|oggi|quest\p{L}*)$/u.test(behind))
    return false
  if (/^(?:anni|years?)$/.test(behind)) return true
  let at = from - 1
  while (at > 0 && OF_AGE.test(tokens[at]!.text)) at--
  const word = tokens[at]?.text ?? ''
  const isSaid = at < from - 1 || /^(?:im|hes|shes)$/.test(word)
  // `Ho 10` counts what is there.
  const isItalianHave = /^(?:ho|ha)$/.test(tokens[from - 1]?.text ?? '') && !/^anni$/.test(behind)
  return isSaid && !isItalianHave && (isPerson(word) || SOMEBODY.test(word))
}

/** `We are three friends`, `siamo in tre`, `we’re five in the house`, `my two sons`: people, of whom nothing is made. */
function isOfPeople({ tokens }: TypedText, { from, to }: Bit): boolean {
  const word = (at: number): string => tokens[at]?.text ?? ''
  if (COUNTED.test(word(to)) || (word(to) === 'of' && word(to + 1) === 'us')) return true
  if (word(from - 1) === 'in' && WE_ARE.test(word(from - 2)) && !/^(?:un|una|a|the)$/.test(word(to))) return true
  const isWe =
    (word(from - 1) === 'were' && from === 1) || (/^(?:are|were)$/.test(word(from - 1)) && word(from - 2) === 'we')
  return isWe && /^(?:in|at|of|,|\.|and|here|people|women|men|friends)$/.test(word(to))
}

const isOfSomebody = (typed: TypedText, bit: Bit): boolean =>
  isAge(typed, bit) || (isOfPeople(typed, bit) && !isFor(typed, bit))

/** For people a drink is made: `for 40 people`, `per 20 amici`. */
const isFor = ({ tokens }: TypedText, { from }: Bit): boolean =>
  /^(?:for|per|to|expect|about)$/.test(tokens[from - 1]?.text ?? '')

const THEY = /^(?:shes?|hes?|theyre|they)$/

/** Who stands before words of being away. */
const AWAY_UNTIL =
  /(?:^| )(\p{L}+)(?: (?:is|are|away|off|out|gone|at|work|home|via|e|fuori|in|holiday|vacanza))+(?: (?:until|till|til|fino|since|from|dal|da))?(?: (?:a|al|the|on))?$/u

/** `My husband is away until Friday`: the day is his. */
function isOfAway({ tokens }: TypedText, { from, text, kind }: Bit): boolean {
  if (kind !== 'date' || text === 'today') return false
  const before = tokens.slice(Math.max(0, from - 8), from).map((token) => token.text)
  const who = AWAY_UNTIL.exec(before.join(' '))?.[1]
  return who !== undefined && (isPerson(who) || THEY.test(who))
}

/** The bits of what is told: how old somebody is, and how many there are at home, are no amounts. */
export const withoutAsides = (typed: TypedText, bits: readonly Bit[]): readonly Bit[] =>
  bits.filter((bit) => !isOfAway(typed, bit) && !(bit.kind === 'bare' && isOfSomebody(typed, bit)))

/** What somebody does who lends a hand, or is only spoken of. */
const LENDS_HAND =
  /^(?:picked|pick|picks|gathered|gather|held|holds|holding|brought|brings|bought|found|gave|helped|helps|helping|washed|peeled|labelled|labeled|carried|fetched|foraged|collected|stirred|stirs|shook|says|said|thinks|thought|reckons|moved|lives|works|married|marries|married|sent|sends|told|tells|left|comes|came|visits|visiting|made|makes|recommended|suggested|rang|phoned|wrote|insists|wondered|portato|tenuto|raccolto|raccolt[aei]|comprato|trovato|regalato|dato|aiutato|lavato|sbucciato|detto|mandato|dice|vive|lavora|abita|sposa|raccoglie|aiuta|porta|reggeva|teneva|aiutava)$/

/** `Bottled in one wine bottle and two little ones`. */
const COUNT = /^(?:\d+|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|some|several|few)$/

const AWAY = /^(?:at|away|asleep|out|off|via|fuori|a)$/

/** Of it something may come to a child. */
const TAKES =
  /^(?:drink|drinks|drank|drinking|taste|tastes|tasted|sip|sips|sipped|try|tries|tried|swallow|swallowed|eat|eats|ate|eaten|lick|licked|have|had|give|safe|allowed|allergic|can|may|could|should|ask|asks|asked|wants|bere|beve|bevuto|beva|assaggi\p{L}*|puo|possono|posso|mangi\p{L}*|ingoi\p{L}*|lecc\p{L}*|dare|dar\p{L}+|chiede|vuole|sorso)$/u

/** The things of somebody: `at my daughter’s`, `my son’s wedding`; `il matrimonio di mia figlia`. */
const OWNED = /^(?:matrimonio|compleanno|festa|laurea|casa|nozze|battesimo|diploma|amic[oa]|compagn[oa]|maestr[oa])$/

/**
 * Of children who hold a funnel and of sons who brought a basket nothing is to be feared: a child counts where it might drink, taste or
 * be given some.
 */
export function withoutBystanders(spans: readonly ConceptSpan[], { text, tokens }: TypedText): readonly ConceptSpan[] {
  if (tokens.some((token) => TAKES.test(token.text))) return spans
  // As it was typed: of a verb that no lexicon has another one is made.
  const wordsOf = (from: number, to: number): readonly string[] =>
    tokens
      .slice(Math.max(0, from), to)
      .map((token) => (token.isMended ? text.slice(token.from, token.to).toLowerCase() : token.text))
  return spans.filter(({ concept, from, to }) => {
    if (concept !== 'infant') return true
    const [before, behind] = [wordsOf(from - 3, from), wordsOf(to, to + 3)]
    // `Three little ones of 200 ml` are bottles.
    const isCounted = COUNT.test(before.at(-1) ?? '') && spans.some((span) => span.concept === 'bottled')
    const isBottle = /^little ones?$/.test(wordsOf(from, to).join(' ')) && (behind[0] === 'of' || isCounted)
    const isOwner =
      /['’]s$/.test(text.slice(tokens[from]!.from, tokens[to - 1]!.to)) || before.some((word) => OWNED.test(word))
    const isAway = before.some((word) => /^(?:while|as|mentre)$/.test(word)) && behind.some((word) => AWAY.test(word))
    const isHelped =
      before.some((word) => /^(?:with|con)$/.test(word)) &&
      !behind.some((word) => /^(?:in|around|about|near|at)$/.test(word))
    return !(isBottle || isOwner || isAway || isHelped || behind.some((word) => LENDS_HAND.test(word)))
  })
}
