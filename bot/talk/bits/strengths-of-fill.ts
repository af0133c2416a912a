import { joins, type Open, type RolesAround, wordsOf } from './attach.ts'

/** No liqueur is wished so strong, % vol: it is the spirit's. Common practice, no source. */
const STRONGEST = 55

/** From here on a strength that is said alone may be the spirit's, % vol: of bottles, and of an amount that is to come out. */
const LEAST = { ofBottles: 36, ofAmount: 45 } as const

/** What stands before the strength of what it is made from. */
const FROM = /^(?:from|out|starting|start|using|with|my|our|partendo|da|dal|dall|con|col|usando|mio)$/

const HOW_STRONG = /^(?:strong|strongish|like|forte|sui)$/

const BEHIND_SPIRIT = /^(?:,|at|is|of|a|al|di)$/

/** Whether a strength is that of a spirit: it stands beside one, or behind `from`, or no liqueur is so strong. */
function isOfSpirit(around: RolesAround, bits: readonly Open[], bit: Open): boolean {
  const at = bits.indexOf(bit)
  const [before, next] = [bits[at - 1], bits[at + 1]]
  if (bit.value >= STRONGEST) return true
  // `Al 30% con alcol al 95%`: the spirit stands before its own.
  const isBeside = next?.kind === 'spirit' && joins(around, bit.to, next.from)
  if (isBeside && !wordsOf(around, bit.to, next.from).some((word) => FROM.test(word))) return true
  const words = wordsOf(around, before?.to ?? 0, bit.from)
  return (
    (before?.kind === 'spirit' && words.every((word) => BEHIND_SPIRIT.test(word))) ||
    words.some((word) => FROM.test(word))
  )
}

/** `3 litres of lemon liqueur at 30 from 95% spirit`: where only what is to come out is told, each strength is the spirit's or the wished one. */
export function strengthsOfFill(around: RolesAround, bits: Open[], isAmount: boolean): void {
  const isFilled =
    isAmount || bits.some(({ kind, role, count = 1 }) => kind === 'bottles' && role === null && count > 1)
  const isPoured = bits.some(
    ({ kind, role }) => (kind === 'volume' && role !== 'gone') || (kind === 'bottles' && role === 'of_spirit'),
  )
  if (!isFilled || isPoured || !bits.some(({ kind }) => kind === 'plant')) return
  const strengths = bits.filter(({ kind, role }) => kind === 'strength' && role !== 'price')
  const spirits = strengths.filter((bit) => isOfSpirit(around, bits, bit))
  const least = isAmount ? LEAST.ofAmount : LEAST.ofBottles
  for (const bit of strengths) {
    // `Six bottles of plum, strong like 38`: told of what they are filled with.
    const isSaidSo = HOW_STRONG.test(wordsOf(around, bit.from - 1, bit.from)[0] ?? '')
    const isWeak = bit.value < (isSaidSo ? LEAST.ofAmount : least)
    const isWished = !spirits.includes(bit) && (spirits.length > 0 || isWeak)
    bit.role = isWished ? 'want' : 'have'
  }
}
