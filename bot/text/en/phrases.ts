import type { FreezerState } from '../../../core/liquid/freezer.ts'

/** Pieces that several sentences share. */
export const inFreezer: Readonly<Record<FreezerState, string>> = {
  liquid: 'stays liquid in the freezer',
  borderline: 'may turn slushy in the freezer',
  slush: 'turns to slush in the freezer',
  solid: 'freezes hard in the freezer',
}

/** `an` before 8, 11, 18, 80 to 89 and so on, as they are said, else `a`. */
export const articleOf = (number: string): 'a' | 'an' => (/^(?:8|1[18](?!\d))/.test(number) ? 'an' : 'a')

/** `a`, `a and b`, `a, b and c`. */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`

/** `twice`, `3 times`. */
export const timesText = (count: number): string => (count === 2 ? 'twice' : `${count} times`)
