import { DomainError } from '../../domain-error.ts'
import type { Wanted } from '../problems.ts'
import { readText, shown, type TypedText } from './tokens.ts'

/** A comma or an `and` between two amounts of liquid joins them too: `500 ml vodka 40% and 500 ml rum 54%`. */
const ANOTHER =
  /(?: ?[,;] |\s(?:and|e|ed|und|et|y|plus) )(?=(?:[1-9][0-9]? ?[x×] ?)?[0-9][0-9.,]* ?(?:ml|cl|dl|l|litres?|liters?)(?!\p{L}))(?<=[0-9] ?(?:ml|cl|dl|l|litres?|liters?)(?!\p{L})[^+]{1,80})/giu

/** The liquids of a list joined with `+`, each read by itself. `+-` is a `±`, not a joint. Throws `dangling_plus`. */
export const splitList = (text: string): readonly TypedText[] => splitAt(text.replace(ANOTHER, ' + '), 'part')

/** The items of a list joined with `+`, likewise. */
export const splitAt = (text: string, wanted: Wanted): readonly TypedText[] => {
  const whole = readText(text, wanted)
  const joints = whole.tokens.filter((token) => token.kind === 'sign' && token.text === '+')
  const starts = [0, ...joints.map(({ to }) => to)]
  return starts.map((start, index) => {
    const item = whole.text.slice(start, joints[index]?.from)
    if (item.trim() === '') throw new DomainError('bad_value', 'dangling_plus', { typed: shown(text) })
    return readText(item, wanted)
  })
}
