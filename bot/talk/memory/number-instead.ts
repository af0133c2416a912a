import { replaced, takes } from './change-call.ts'
import { callReading, changedOf, digitsOf, numbersOf, type Rule, setTo } from './rule.ts'

/** `12 lemons not 10`, `no, 700 not 750`, `28 instead of 30`. */
export const corrected: Rule = (sentence, last) => {
  const { typed, has } = sentence
  const numbers = numbersOf(sentence)
  const not = typed.tokens.findIndex(({ text }) => text === 'not' || text === 'non')
  const of = typed.tokens.findIndex(
    ({ text }, at) =>
      (text === 'of' && typed.tokens[at - 1]?.text === 'instead') ||
      (text === 'than' && typed.tokens[at - 1]?.text === 'rather'),
  )
  const mark = not > 0 ? not : of
  if (mark !== -1 && numbers.length === 2) {
    const right = numbers.find(({ to }) => to <= mark) ?? numbers.findLast(({ from }) => from > mark)
    const wrong = numbers.find((bit) => bit !== right)
    if (right?.kind === 'strength' && wrong !== undefined && takes(changedOf(last).command, 'to-strength'))
      return setTo(right, changedOf(last), true)
    if (right?.kind === 'volume' && wrong !== undefined) return setTo(right, changedOf(last), true)
    if (right === undefined || wrong === undefined) return null
    const measure = right.kind === 'mass' ? right.text : undefined
    const changed = replaced(last, digitsOf(wrong), digitsOf(right), measure)
    return changed === null ? null : callReading(changed)
  }
  const [only, another] = numbers
  if (only === undefined || another !== undefined || !has('instead', 'not_so')) return null
  return setTo(only, changedOf(last), true)
}
