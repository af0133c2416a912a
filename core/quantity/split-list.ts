import { DomainError } from '../domain-error.ts'
import { readText, shown, type TypedText } from './typed-text.ts'

/** The liquids of a list joined with `+`, each read by itself. `+-` is a `±`, not a joint. Throws `dangling_plus`. */
export const splitList = (text: string): readonly TypedText[] => {
  const whole = readText(text, 'part')
  const joints = whole.tokens.filter((token) => token.kind === 'sign' && token.text === '+')
  const starts = [0, ...joints.map(({ to }) => to)]
  return starts.map((start, index) => {
    const item = whole.text.slice(start, joints[index]?.from)
    if (item.trim() === '') throw new DomainError('bad_value', 'dangling_plus', { typed: shown(text) })
    return readText(item, 'part')
  })
}
