import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'

const MOST_WORDS = 5

/**
 * `Both` to which job is done of a jar: each in words of its own, the taste last, so that how it was is asked. Null where a job takes
 * amounts, where only one is left, or where it says anything else.
 */
export function bothDone(whole: TalkReading, { typed, bits, has, jars }: Sentence): readonly string[] | null {
  if (whole.kind !== 'question' || whole.about.kind !== 'which_done' || !has('both_of_them', 'all_of_them')) return null
  const { choices } = whole
  const tastes = choices.filter(({ command }) => command === 'jar taste')
  const shakes = choices.filter(({ command }) => command === 'jar shake')
  const isSimple = tastes.length === 1 && shakes.length === 1 && choices.length === 2
  if (!isSimple || bits.length > 0 || typed.tokens.length > MOST_WORDS || has('denial', 'hypothesis')) return null
  const nameOf = (jar: string | undefined): string => jars.find(({ id }) => `#${id}` === jar)?.name ?? jar ?? ''
  const shaken = shakes[0]!.options.jar
  return [shaken === 'all' ? 'shook all' : `shook ${nameOf(shaken)}`, `tasted ${nameOf(tastes[0]!.options.jar)}`]
}
