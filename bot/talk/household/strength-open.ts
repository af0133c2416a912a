/** `No idea how strong it is`, `I can’t measure the strength`, `non so quanti gradi ha`. */
const STRENGTH_UNKNOWN =
  /[\s,;.–—-]*(?:\b(?:but|and|ma|e|though)\s+)?(?:\b(?:i|we)\s*(?:['’]ve|have)?\s*)?\b(?:(?:got|have)\s+)?(?:no (?:idea|clue)|not (?:sure|certain)|haven['’]?t (?:a clue|got a clue|the foggiest|measured|tested|checked)|(?:do|did|could|ca|would)n['’]?t (?:really |even )?(?:know|tell|say|measure|test|check)|cannot (?:tell|say|measure)|dunno|no way (?:of|to) (?:knowing|know|measuring|measure|telling|tell)|non (?:lo )?(?:so|saprei|ho idea|ho misurato|posso misurare)|nessuna idea|boh)(?:\s+(?:at all|of|about|you|it|how|what|is|the|that|its|sia|di|la|il|quanto|quanti|che|è|e|era))*\s+(?:strong|strength|abv|per ?cent\p{L}*|proof|alcohol|fort[ei]|gradi|gradazione|alcol)(?![\p{L}])(?:\s+(?:it|that|the|is|was|sia|è|e|ha|now|adesso|ora|though|yet|exactly|came|out|lot|batch|infusion)\b)*/iu

const CHEAP = /strong|strength|abv|per ?cent|proof|alcohol|fort|grad|alcol/i
const STRAINED = /\b(?:strain|sieve|filter|drain|squeez|colat|filtrat|spremut)/i

/** Whether a text says that nobody knows how strong it is. */
export const isStrengthUnknown = (text: string): boolean =>
  CHEAP.test(text) && !text.includes('?') && STRENGTH_UNKNOWN.test(text)

/** What is told of a straining whose strength nobody knows, without that; null where it tells of none. */
export function withoutStrength(text: string): string | null {
  if (!STRAINED.test(text) || !isStrengthUnknown(text)) return null
  const rest = text.replace(STRENGTH_UNKNOWN, '')
  return STRAINED.test(rest) ? rest : null
}
