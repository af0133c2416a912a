import { asksFor } from '../../../core/botanical/find/asked-which.ts'
import { PIECES } from '../frames/plant-slots.ts'
import { withOption } from './change-call.ts'
import { isRead } from './lacked.ts'
import { AMOUNT, BEHIND, idsOf, LEAD } from './plant-answered.ts'
import { callReading, type Rule } from './rule.ts'

const MOST_WORDS = 7

/** `No, mine is`, `actually it’s`. */
const BEFORE =
  /^(?:(?:oh|ah|no|sorry|wait|actually|well|ok|and|but|mine|ours|mia|la|di|scusa|anzi|invece|use|make|it|that|take|usa|prendi)(?:['’]s)?[,\s]+)+/i

/** `Ceylon`, `actually it’s Ceylon`: another kind of a plant of the plan, which one name of theirs stands for; as much of it, in the same pieces. */
export const otherKind: Rule = ({ typed }, call) => {
  const { of } = call.options
  if (call.command !== 'plan' || of === undefined || typed.tokens.length > MOST_WORDS || typed.text.includes('?'))
    return null
  const said = typed.text
    .trim()
    .replace(BEFORE, '')
    .replace(LEAD, '')
    .replace(BEFORE, '')
    .replace(BEHIND, '')
    .trim()
    .toLowerCase()
  if (said === '' || /\d|\b(?:not?|or|without|more|less)\b/.test(said)) return null
  const items = of.split(/\s*\+\s*/)
  for (const [at, item] of items.entries()) {
    const amount = AMOUNT.exec(item)?.[0].trim() ?? ''
    const name = item.replace(AMOUNT, '').trim()
    const [id, another] = idsOf(name)
    if (id === undefined || another !== undefined) continue
    const last = name.split(/\s+/).at(-1) ?? ''
    const piece = PIECES.test(last) ? last : ''
    for (const { words, choices } of asksFor(id)) {
      const word = words.split(', ')[0]!
      const meant = [said, `${said} ${word}`].flatMap((text) => idsOf(text).slice(0, 2))
      if (meant[0] === undefined || meant.some((each) => each !== meant[0] || each === id || !choices.includes(each)))
        continue
      const found = [`${said} ${word} ${piece}`, `${said} ${piece || last}`, `${said} ${word}`, said]
        .filter((text) => idsOf(text.trim())[0] === meant[0])
        .map((text) => `${amount} ${text}`.trim())
        .find((text) => isRead('plan', 'of', text))
      if (found !== undefined) return callReading(withOption(call, 'of', items.with(at, found).join(' + ')))
    }
  }
  return null
}
