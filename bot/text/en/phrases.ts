import type { FreezerState } from '../../../core/liquid/freezer.ts'

/** Pieces that several sentences share. */
export const inFreezer: Readonly<Record<FreezerState, string>> = {
  liquid: 'stays liquid in the freezer',
  borderline: 'may turn slushy in the freezer',
  slush: 'turns to slush in the freezer',
  solid: 'freezes hard in the freezer',
}

/** `a`, `a and b`, `a, b and c`. */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`
