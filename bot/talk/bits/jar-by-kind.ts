import type { BotanicalKind } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { TalkJar } from './bit.ts'
import { runningAmong } from './jars-of.ts'

/** What kinds of plants are called as a jar is told by them. */
const CALLED: Readonly<Record<string, BotanicalKind>> = {
  citrus: 'citrus',
  citrusy: 'citrus',
  agrumi: 'citrus',
  root: 'root',
  radici: 'root',
  herb: 'herb',
  herby: 'herb',
  herbal: 'herb',
  erbe: 'herb',
  flower: 'flower',
  flowery: 'flower',
  floral: 'flower',
  fiori: 'flower',
  berry: 'berry',
  nut: 'nut',
  nutty: 'nut',
  noci: 'nut',
}

const A_JAR = /^(?:one|ones|jar|batch|lot|kilner|infusion|liqueur)$/
const OF = /^(?:agli|alle|ai|di|con|degli|delle|dei)$/

/** `The citrus one`, `quello agli agrumi`: the only jar whose first plant is of such a kind; null where there are more, or none. */
export function jarByKind(tokens: readonly Token[], at: number, jars: readonly TalkJar[]): TalkJar | null {
  const kind = CALLED[tokens[at]!.text]
  const isOfJar = A_JAR.test(tokens[at + 1]?.text ?? '') || OF.test(tokens[at - 1]?.text ?? '')
  if (kind === undefined || !isOfJar) return null
  const [only, another] = runningAmong(jars).filter(
    ({ plants: [first] }) => first !== undefined && botanicalById(first).kind === kind,
  )
  return only === undefined || another !== undefined ? null : only
}

const SPIRIT = /^(?:gin|vodka|rum|brandy|cognac|grappa|whiske?y|bourbon|tequila|mezcal|everclear|alcool|alcol)$/
const OWN = /^(?:the|my|our|il|lo|la)$/
/** Before the spirit that tells a jar: `the one with the gin`, `quello con il gin`, `quello al gin`. */
const ONE_WITH =
  /(?:^| )(?:the (?:one|jar|batch)(?: thats)? (?:with|in|on)(?: the)?|quell[oa] (?:con|al|alla|nel|nella|in)(?: il| la)?)$/

/** `The gin one`, `the one with the gin`: the only jar that was started with such a spirit; null where there are more, or none. */
export function jarBySpirit(tokens: readonly Token[], at: number, jars: readonly TalkJar[]): TalkJar | null {
  const { text } = tokens[at]!
  if (!SPIRIT.test(text)) return null
  const before = tokens.slice(Math.max(0, at - 5), at).map((token) => token.text)
  const isNamed = OWN.test(before.at(-1) ?? '') && A_JAR.test(tokens[at + 1]?.text ?? '')
  if (!isNamed && !ONE_WITH.test(before.join(' '))) return null
  const plain = (word: string): string => word.replace('key', 'ky').replace('alcool', 'alcol')
  const [only, another] = runningAmong(jars).filter(({ spiritTyped }) =>
    (spiritTyped ?? '')
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .some((word) => plain(word) === plain(text)),
  )
  return only === undefined || another !== undefined ? null : only
}
