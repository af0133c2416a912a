import { type Open, type RolesAround, wordsOf } from './attach.ts'

const HOW_STRONG =
  /^(?:gentle|mild|milder|light|lighter|soft|easy|weak|weaker|strong|stronger|strongish|punchy|boozy|legger[oa]|delicat[oa]|fort[ei])$/
const ABOUT = /^(?:ish|or so|or thereabouts|o giu di li|o poco piu|circa)\b/

/** Strengths that a liqueur is wished at, % vol; common practice, no source. */
const LEAST = 12
const MOST = 45

/** `Something gentle with peaches, 25ish, there’s a litre of 95`: of a wish for how strong it is, not a count of the fruit before it. */
export function aboutSoStrong(around: RolesAround, bits: Open[]): void {
  const said = around.typed.tokens.findIndex(({ text }) => HOW_STRONG.test(text))
  const isSpirit = bits.some(
    ({ kind, value }) => kind === 'spirit' || ((kind === 'strength' || kind === 'bare') && value > MOST),
  )
  if (said === -1 || !isSpirit) return
  for (const bit of bits) {
    const isNumber = bit.kind === 'bare' && bit.value >= LEAST && bit.value <= MOST && bit.from > said
    const isBehindComma = /^(?:,|-|around|about|say|circa|like)$/.test(wordsOf(around, bit.from - 1, bit.from)[0] ?? '')
    if (!isNumber || !isBehindComma || !ABOUT.test(wordsOf(around, bit.to, bit.to + 4).join(' '))) continue
    bit.kind = 'strength'
    bit.text = `${bit.text}%`
    bit.role = 'want'
  }
}
