import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Open, RolesAround } from './attach.ts'

/** `700 of 40`, `measured 930`: a number too large for a strength is a volume where a liquid is spoken of. */
export function volumes(around: RolesAround, bits: Open[]): void {
  const isLiquid =
    around.spans.some(({ concept }) => VOLUMES.has(concept)) ||
    bits.some(({ kind }) => kind === 'strength' || kind === 'spirit')
  // `Off at 920`, `restano 930`: of what came out nothing else is so large.
  const isTold = around.spans.some(({ concept }) => concept === 'strained' || concept === 'filtered')
  bits.forEach((bit, at) => {
    if (bit.kind !== 'bare' || (bit.with !== undefined && bit.role !== 'of_spirit' && bit.role !== 'of_water')) return
    if (bit.value < 100 || bit.value > 20_000 || !isLiquid) return
    const next = bits[at + 1]
    const isOfStrength = next?.kind === 'strength' || next?.kind === 'spirit'
    const before = around.typed.tokens[bit.from - 1]?.text ?? ''
    if (
      bit.role === null &&
      !isOfStrength &&
      !isTold &&
      !/^(?:got|of|measured|now|have|a|is|about|had|came|out|just|,|\.|:|it|only|me|left|ml|lemon|put|made|with|sono|ho|misurato)$/.test(
        before,
      ) &&
      bit.from !== 0
    )
      return
    bit.kind = 'volume'
    bit.text = `${bit.text} ml`
    if (bit.role === null) bit.role = 'have'
  })
}

const VOLUMES = new Set<ConceptSpan['concept']>([
  'strained',
  'infusion',
  'reads',
  'filtered',
  'finished_drink',
  'thin',
  'pour_together',
  'syrup',
  'too_sweet',
  'too_strong',
  'too_weak',
  'how_strong',
])
