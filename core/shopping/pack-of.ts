import type { MaterialId } from '../quantity/materials.ts'
import { materialNamed } from '../quantity/read/material-named.ts'
import { readText } from '../quantity/read/tokens.ts'

/** `a bag of`, `2 packets`, `un pacco di`, `some`: how much, in nothing that is weighed. */
const PACK =
  /^(?:(?:an?|one|two|three|half an?|the|my|an? full|an? big|an? small|un[ao]?|mezzo|\d+)\s+)*(?:bags?|packs?|packets?|boxes|box|tins?|tubs?|pots?|jars?|bottles?|pacc(?:o|hi)|pacchett[oi]|sacchett[oi]|bust[ae]|scatol[ae]|barattol[oi]|vasett[oi]|bottigli[ae])\s+(?:of\s+|di\s+|d['’]\s*)?(?<of>\p{L}.*)$|^(?:some|a bit of|a little|un po['’]? di)\s+(?<some>\p{L}.*)$/iu

/** What sweetens, of which only a pack was said; null of anything else. */
export function packOf(text: string): MaterialId | null {
  const { of, some } = PACK.exec(text)?.groups ?? {}
  const named = of ?? some
  return named === undefined ? null : materialNamed(readText(named, 'sweetener').tokens.map(({ text: word }) => word))
}
