import { AMOUNTS, joins, type Open, type RolesAround, THINGS, wordsOf } from './attach.ts'
import type { Bit } from './bit.ts'

/** All that stands between an amount and what is said in its place. */
const AROUND =
  /^(?:[,.;:!()/-]|…|–|—|no|nope|nah|not|sorry|wait|oops|whoops|ops|pardon|hang|hold|on|i|ill|ll|tell|a|lie|mean|meant|make|that|thats|it|its|rather|actually|correction|scratch|strike|or|well|hmm|er|um|erm|anzi|scusa|scusate|aspetta|volevo|dire|meglio)$/

/** That it is said again, and otherwise. */
const CORRECTS =
  /(?:^| )(?:no|nope|sorry|wait|oops|whoops|ops|hang on|hold on|i mean|i meant|correction|scratch that|strike that|tell a lie|rather|anzi|scusa|scusate|volevo dire)(?= |$)/

/** The same of what is counted, weighed or poured; `95 %, make it 30` is wished, and of `750 actually, not 800` the first counts. */
const CORRECTS_AMOUNT = /(?:^| )(?:make (?:that|it)|actually)(?= |$)(?!.* (?:not|non)$)/

/** Nobody is wrong by more. */
const MOST_OFF = 12

/** Told with no unit at first: `gooseberries 500, I mean 600 g`, `a litre of 90, no, 95%`. */
const LEAST_BARE = 20

const UNIT = /^([\d.,]+)\s*(\p{L}.*)$/u

const isCorrectable = ({ kind, role }: Bit): boolean =>
  role === null && (AMOUNTS.has(kind) || kind === 'strength' || kind === 'sweetness')

/** What is said in its place, in its own unit where it brings none; null where it is of something else. */
function instead(first: Open, next: Open): Pick<Open, 'kind' | 'value' | 'text'> | null {
  if (next.value <= 0 || first.value <= 0) return null
  const isPlain = first.kind !== 'bottles' || (first.isSizeAssumed === true && next.isSizeAssumed === true)
  if (first.kind === next.kind) return isPlain ? { kind: next.kind, value: next.value, text: next.text } : null
  if (first.kind === 'bare' && next.kind !== 'bottles' && first.value >= LEAST_BARE)
    return { kind: next.kind, value: next.value, text: next.text }
  const [, number = '', unit = ''] = UNIT.exec(first.text) ?? []
  const each = first.value / Number(number.replace(',', '.'))
  if (next.kind !== 'bare' || unit === '' || !Number.isFinite(each)) return null
  return { kind: first.kind, value: next.value * each, text: `${next.text} ${unit}` }
}

const isSame = (one: Open, other: Open): boolean =>
  one.kind === other.kind && one.text.toLowerCase() === other.text.toLowerCase()

/** What the amount at a place is of, where that stands directly behind it. */
function thingBehind(around: RolesAround, bits: readonly Open[], at: number): Open | undefined {
  const [bit, behind] = [bits[at]!, bits[at + 1]]
  const isThing = behind !== undefined && THINGS.has(behind.kind) && joins(around, bit.to, behind.from)
  return isThing ? behind : undefined
}

/**
 * `1 kg of plums, no wait, 1.2 kg`, `10 limoni, anzi 12`, `800 g, hang on, 900`: what is said last counts, in the place of what it
 * puts right. What went before is gone.
 */
export function corrected(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    if (!isCorrectable(bit) || at === 0) return
    let first = at - 1
    while (first > 0 && at - first <= 3 && !isCorrectable(bits[first]!)) first--
    const before = bits[first]!
    const between = bits.slice(first + 1, at)
    if (!isCorrectable(before) || !between.every(({ kind, role }) => THINGS.has(kind) && role === null)) return
    const words = wordsOf(around, bits[at - 1]!.to, bit.from)
    if (words.length === 0 || !words.every((word) => AROUND.test(word))) return
    const said = words.filter((word) => /\p{L}/u.test(word)).join(' ')
    const isAmount = AMOUNTS.has(before.kind)
    if (!CORRECTS.test(said) && !(isAmount && CORRECTS_AMOUNT.test(said))) return
    const other = instead(before, bit)
    if (other === null || Math.max(other.value / before.value, before.value / other.value) > MOST_OFF) return
    const of = between.find(({ from }) => joins(around, before.to, from)) ?? bits[first - 1]
    const behind = thingBehind(around, bits, at)
    if (behind !== undefined && of !== undefined && !isSame(of, behind)) {
      // `10 lemons, no, 12 limes`: nor is the first of them meant.
      if (between.length === 0 || of.kind !== 'plant' || behind.kind !== 'plant') return
      of.role = 'gone'
    } else if (behind !== undefined && between.length > 0) behind.role = 'gone'
    // Of what stands behind them, the last is told of it as it is.
    if (behind !== undefined && behind.role !== 'gone') {
      Object.assign(bit, other)
      Object.assign(before, { kind: 'bare', role: 'gone', with: at })
    } else {
      Object.assign(before, other)
      Object.assign(bit, { kind: 'bare', role: 'gone', with: first })
    }
  })
}
