import type { FrameTried } from '../frames/score.ts'

/** From here on it is alcohol to dilute, of which not every bottle is as strong, % vol. */
const STRONG = 60

/** The spirit as it was taken, where it was named without its strength, or not at all; null where it was said. */
export function takenSpirit({ options, used }: FrameTried): string | null {
  const { spirit } = options
  if (spirit === undefined || used.some(({ kind, role }) => kind === 'strength' && role === 'have')) return null
  const isPoured = used.some(({ kind, role }) => kind === 'volume' || (kind === 'bottles' && role === 'of_spirit'))
  const isStrong = used.some(({ kind, value }) => kind === 'spirit' && value >= STRONG)
  return !isPoured || isStrong ? spirit : null
}
