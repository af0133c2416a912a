import type { Unusual } from '../../../../core/jar/record/check-sequence.ts'
import type { Expected } from '../../../../core/jar/state/judge-measurement.ts'
import { quoted } from '../../../chat/grammar/write-line.ts'
import type { Format } from '../../format.ts'

type Plain = Exclude<Unusual, { readonly expected: Expected }>['key']

type Named = 'sweetened_again' | 'bottled_unsweetened'

type Notes = {
  readonly [Key in Exclude<Plain, Named | 'added_spirit_after_straining'> as `jar_${Key}`]: () => string
} & {
  readonly [Key in Named as `jar_${Key}`]: (jar: { readonly name: string }) => string
} & {
  readonly jar_added_spirit_after_straining: (now: { readonly isStronger: boolean | null }) => string
  readonly jar_reading_surprising: (expected: Expected, format: Format) => string
}

const expectedText = ({ amount, abvPercent }: Expected, format: Format): string => {
  const kind = amount?.by === 'mass' ? 'mass' : 'volume'
  return [
    ...(amount === null ? [] : [`${format[kind](amount.amount)} ± ${format.give[kind](amount.amount)}`]),
    ...(abvPercent === null ? [] : [`${format.strength(abvPercent)} ± ${format.give.strength(abvPercent)}`]),
  ].join(' at ')
}

/** What is unusual about a step that was recorded all the same. */
export const unusualNotes: Notes = {
  jar_added_spirit_after_straining: ({ isStronger }) => {
    if (isStronger === null) return 'It’s strained already. Its strength stays as it was.'
    return `It’s strained already, so this makes it ${isStronger ? 'stronger' : 'weaker'} than planned.`
  },
  jar_bottled_unsweetened: ({ name }) =>
    `No sugar went in, as far as I know. If some did, /jar sweeten ${quoted(name)} asks how much.`,
  jar_shaken_after_straining: () => 'It is strained already and needs no more shaking.',
  jar_strained_early: () => 'That is earlier than planned; it may taste faint.',
  jar_reading_surprising: (expected, format) =>
    `I expected ${expectedText(expected, format)}; if a number slipped, /jar correct puts it right.`,
  jar_sweetened_again: ({ name }) =>
    `It was sweetened before; I count both. If that was typed twice, /jar undo ${quoted(name)} takes one back.`,
  jar_changed_after_bottling: () => 'It is in bottles already; I count this as if it went into all of it.',
  jar_opened_unbottled: () => 'It was never bottled, as far as I know.',
  jar_opened_early: () => 'It has not rested as long as planned; it will be better later.',
  jar_tasted_after_end: () => 'That jar is done; I keep what you tasted with it.',
}
