import type { Sentence } from '../bits/bit.ts'

/** Whether what is said of it is that it is not so, or that it is to be kept from it. */
export type Denial = 'denied' | 'prevented'

const NOT =
  /^(?:not|isnt|wasnt|arent|werent|hasnt|havent|hadnt|didnt|doesnt|dont|wont|wouldnt|never|no|nor|neither|nothing|none|without|hardly|aint|non|senza|mai|ne|nessun|nessuno|nessuna|niente|nulla)$/

const STOP =
  /^(?:stop|stops|stopping|stopped|prevent|prevents|preventing|prevented|avoid|avoids|avoiding|avoided|keep|evit\p{L}*|imped\p{L}*|prevenire|prevengo|without|senza)$/u

/** What may stand between: of the words before what went wrong no other than these. */
const BETWEEN: ReadonlySet<string> = new Set(
  (
    'freeze freezes freezing frozen froze it its them this that he she they be been being is are was go goes going gone went get gets ' +
    'getting got turn turns turning turned become becomes becoming became come comes coming came look ' +
    'looks looking taste tastes tasting tasted smell smells smelling smelt form forming develop ' +
    'developing grow growing seem seems make making have has had having do does of like from at all a ' +
    'an any the my our so too very really even yet longer more ever much bit little sign signs trace ' +
    'quite limoncello liqueur drink lemon colour ' +
    'e ed ha ho sta stanno fa fare sa di da si mi lo la le il i piu che diventa diventare diventi ' +
    'diventato diventata diventando venuto venuta molto tanto troppo affatto per fatto fatta preso ' +
    'presa un una alcun alcuna ancora stato stata odora odore liquore farlo farla'
  ).split(' '),
)

/** `Keep the orange from going bitter`: what it is of. */
const isNamed = ({ bits, spans }: Sentence, at: number): boolean =>
  bits.some(({ kind, from, to }) => (kind === 'plant' || kind === 'jar') && from <= at && at < to) ||
  spans.some(({ concept, from, to }) => concept === 'drink_named' && from <= at && at < to)

/** `Not only cloudy`: it is. */
const ONLY = /^(?:only|just|merely|solo|soltanto)$/

/** `It’s not mould, is it?` */
const DOUBTED = /(?:^| )(?:is it|is this|does it|has it|right|vero|o no|or not|or is it)(?: [?.!])?$/

/** `It’s not cloudy`, `how do I keep it from going bitter`: what is said of what stands at a place; null where it is so. */
export function denialAt(sentence: Sentence, at: number): Denial | null {
  const words = sentence.typed.tokens.map(({ text }) => text)
  if (DOUBTED.test(words.join(' '))) return null
  let place = at - 1
  while (
    place >= 0 &&
    !NOT.test(words[place]!) &&
    !STOP.test(words[place]!) &&
    (BETWEEN.has(words[place]!) || isNamed(sentence, place))
  )
    place--
  const word = words[place]
  if (word === undefined || ONLY.test(words[place + 1] ?? '')) return null
  // `It won’t stop fizzing`.
  const isStopped = STOP.test(word)
  if (isStopped && place > 0 && NOT.test(words[place - 1]!)) return null
  // `How not to`, `come faccio a non farlo`.
  if (isStopped || (NOT.test(word) && /^(?:to|how|a|per)$/.test(words[place - 1] ?? ''))) return 'prevented'
  return NOT.test(word) ? 'denied' : null
}
