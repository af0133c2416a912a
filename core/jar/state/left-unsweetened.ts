import { isTooStrongNeat } from '../../liquid/neat.ts'
import type { HappeningEntry } from '../entry/entry.ts'

/** A note that says this and nothing else: its maker wants no sugar in it. */
const NO_SUGAR = /^\s*(?:no|without|senza|niente)(?: (?:any|more|added))* (?:sugar|syrup|zucchero|sciroppo)[\s.!]*$/i

/** Whether words are a wish for no sugar. */
export const saysNoSugar = (note: string): boolean => NO_SUGAR.test(note)

/** Whether its maker wants no sugar in it. */
export const isUnsweetened = (happened: readonly HappeningEntry[]): boolean =>
  happened.some((entry) => entry.kind === 'noted' && entry.note !== null && saysNoSugar(entry.note))

/** Whether it is bottled as it was strained: no sugar is wished, and its spirits, % vol, are drunk as they are. */
export const isLeftAsItIs = (happened: readonly HappeningEntry[]): boolean =>
  isUnsweetened(happened) &&
  happened.every(
    (entry) =>
      (entry.kind !== 'started' && entry.kind !== 'added') ||
      entry.spirits.every(({ abvPercent }) => !isTooStrongNeat(abvPercent.value)),
  )
