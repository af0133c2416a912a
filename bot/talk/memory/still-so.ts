import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Rule } from './rule.ts'

/** `It still says 57`, `same again, 57`, `segna sempre 57`. */
const STILL =
  /^(?:(?:no|nope|yes|well|but|and|ok|hm+|sorry|ma|si|e) )*(?:(?:it|its|it s|the hydrometer|the alcoholmeter|that|i) )*(?:(?:says|reads|shows|segna|dice|is|get|got|measured|read|really|did|does) )*(?:still|again|the same|same again|same|sempre|ancora|di nuovo)\b/u

/** A number that was doubted and is measured once more: what was written down stands. Null where it is another number. */
export const stillSo: Rule = ({ bits, typed }, last, { step }) => {
  const [only, another] = bits
  if (only === undefined || another !== undefined || !/^(?:strength|bare|volume)$/.test(only.kind)) return null
  if (step?.options.jar === undefined || last.command !== step.command || typed.text.includes('?')) return null
  if (!STILL.test(wordsAlone(typed))) return null
  const told = [step.options.strength, step.options.measured].map((text) => Number.parseFloat(text ?? ''))
  return told.includes(only.value) || told.includes(Number.parseFloat(only.text))
    ? { kind: 'last', what: 'let_be' }
    : null
}
