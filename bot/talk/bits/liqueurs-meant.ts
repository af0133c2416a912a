import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'

/** `Liquor` is spirit, and how many spell the drink that is made of it. */
const LIQUOR = /^(?:liquors?|liqours?|liquers?|liquours?|liqeurs?|liquiers?)$/

const LONGEST_NAME = 3

const NONE: ReadonlySet<string> = new Set()

/** Where the name of a plant begins that ends before a piece; null where none does. */
function nameBefore(tokens: readonly Token[], at: number): number | null {
  for (let count = LONGEST_NAME; count > 0; count--) {
    const from = at - count
    if (from >= 0 && plantSaid(tokens, from, NONE)?.next === at) return from
  }
  return null
}

/** `10 lemons liquor 95%`: what is counted or weighed is steeped in liquor. `30 ml lemon liquor` is a drink. */
function isAmountBefore(tokens: readonly Token[], from: number): boolean {
  const [before, ahead] = [tokens[from - 1], tokens[from - 2]]
  return (
    before?.kind === 'number' ||
    (ahead?.kind === 'number' && /^(?:k?g|grams?|kilos?|lbs?|oz)$/.test(before?.text ?? ''))
  )
}

/** `Lemon liquor`, `sloe liqour`: behind a plant it is the liqueur that is to be made, never the spirit. */
export function liqueursMeant(tokens: readonly Token[]): readonly Token[] {
  return tokens.map((token, at) => {
    if (token.kind !== 'word' || !LIQUOR.test(token.text)) return token
    const from = nameBefore(tokens, at)
    if (from === null || isAmountBefore(tokens, from)) return token
    return { ...token, text: token.text.endsWith('s') ? 'liqueurs' : 'liqueur', isMended: true }
  })
}
