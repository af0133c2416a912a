import { onlyBit } from './amount-slots.ts'
import type { Fill } from './plant-slots.ts'

/** How much was poured off: the volume that is said, whatever it stands beside. */
export const pouredOff: Fill = ({ bits, typed }) => {
  const said = onlyBit(bits.find(({ kind, role }) => kind === 'volume' && role !== 'gone'))
  const at = typed.tokens.findIndex(({ text }) => PART.test(text))
  if (said !== null || at === -1) return said
  const from = at > 0 && COUNT.test(typed.tokens[at - 1]!.text) ? at - 1 : at
  const text = typed.tokens
    .slice(from, at + 1)
    .map((token) => token.text)
    .join(' ')
  return { text, bits: [{ kind: 'bare', role: null, text, value: 0, from, to: at + 1 }] }
}

/** `half of it`, `a third`; `in two` says nothing of how much. */
const PART = /^(?:half|thirds?|quarters?|metà|meta|terzo|quarto)$/
const COUNT = /^(?:a|one|two|three|un|due|tre)$/
