import { type Open, type RolesAround, wordsOf } from './attach.ts'
import { MOST_BOTTLE_ML } from './bottle-bits.ts'
import { EACH } from './size-behind.ts'

const OF_SIZE = /^(?:of|di|da|at|in|,|x|\(|each|for|the|by)$/
const SMALL = /^(?:little|small|lil|mini|tiny|wee|big|large|piccol[ei]|grandi)$/

/** `20 limoncellos of 200 ml`, `12 sloe gins, 350 ml each`: drinks that are counted, each of a size, are bottles of it. */
export function drinksCounted(around: RolesAround, bits: Open[]): void {
  bits.forEach((count, at) => {
    const [drink, size] = [bits[at + 1], bits[at + 2]]
    if (count.kind !== 'bare' || count.value < 2 || !Number.isInteger(count.value)) return
    if (drink?.kind !== 'plant' || drink.spirit === undefined || size?.kind !== 'volume') return
    if (size.value > MOST_BOTTLE_ML || !wordsOf(around, count.to, drink.from).every((word) => SMALL.test(word))) return
    const between = wordsOf(around, drink.to, size.from)
    const isEach = EACH.test(wordsOf(around, size.to, size.to + 1)[0] ?? '')
    if (!between.every((word) => OF_SIZE.test(word)) || (between.length === 0 && !isEach)) return
    // `10 limoncellos in 2 litres of vodka`: what is poured is no size.
    if (bits[at + 3]?.kind === 'spirit' && !isEach) return
    count.kind = 'bottles'
    count.count = count.value
    count.text = `${count.text} x ${size.text}`
    count.value *= size.value
    size.role = 'gone'
  })
}
