import type { UndrinkableId } from './undrinkable.ts'

/** An option's whole text with which the same line would run; `line` is that line, where a chat knows it. */
interface Mended {
  readonly fix: string | null
  readonly line?: string | null
}

/** What can be wrong with a spirit. `typed` is fit to be shown; `word` is of a table. */
export interface SpiritProblems {
  readonly refused_spirit: { readonly typed: string; readonly word: string; readonly id: UndrinkableId }
  /** One typo away from what must not be drunk. */
  readonly near_refused_spirit: { readonly typed: string; readonly word: string; readonly id: UndrinkableId }
  /** Words that are no drink of the trade. */
  readonly unknown_drink: Mended & {
    readonly typed: string
    readonly extra: string
    /** The drink that may have been meant. */
    readonly meant: string | null
    /** The drink of the trade that stands beside them; null where none does. */
    readonly drink: string | null
    /** Whether a plant of the catalogue is among them. */
    readonly isPlant: boolean
  }
  /** A word for alcohol that is on bottles to drink and on others. */
  readonly ethanol_asked: Mended & { readonly typed: string; readonly word: string }
  /** A liqueur or a wine without its sweetness. */
  readonly drink_sweetness: Mended & { readonly typed: string; readonly words: string }
  /** Beyond what distilling makes; `abvPercent` at 20 °C. */
  readonly spirit_too_strong: Mended & {
    readonly typed: string
    readonly abvPercent: number
    readonly mostAbvPercent: number
  }
}

declare module '../../domain-error.ts' {
  interface Problems extends SpiritProblems {}
}
