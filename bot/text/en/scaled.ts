import type { Format } from '../format.ts'
import type { CodeFrom } from '../messages/share.ts'
import { plantName } from './cook-names.ts'
import { capital } from './phrases.ts'

/** A jug tells no more of it. */
const NEAR = 0.03

const isNear = (factor: number): boolean => Math.abs(factor - 1) < NEAR

/** `about the same amounts as lemon`, `half the amounts of lemon`, `92 % of the amounts of lemon`. */
export function amountsScaled(factor: number, whose: string, { plain }: Pick<Format, 'plain'>): string {
  if (isNear(factor)) return `about the same amounts as ${whose}`
  const times = timesOf(factor, plain)
  return `${times}${times.endsWith('%') ? ' of' : ''} the amounts of ${whose}`
}

/** `Scaled to your spirit: half of lemon.`, `To fill your bottles: 2.5 times lemon.` */
export function scaledFrom(
  { factor, by, id }: Pick<CodeFrom, 'factor' | 'by' | 'id'>,
  whose: string,
  { plain }: Pick<Format, 'plain'>,
): string {
  const why = by === 'spirit' ? 'Scaled to your spirit' : capital(scaledBy({ by, id }))
  if (isNear(factor)) return `${why}: about the same as ${whose}.`
  const times = timesOf(factor, plain)
  return `${why}: ${times}${/(?:%|half)$/.test(times) ? ' of' : ''} ${whose}.`
}

/** `half`, `twice`, `92 %`, `1.05 times`. */
function timesOf(factor: number, plain: Format['plain']): string {
  const percent = plain(100 * factor, factor < 0.1 ? 1 : 0)
  if (percent === '50') return 'half'
  if (percent === '200') return 'twice'
  return factor < 1 ? `${percent}\u00a0%` : `${plain(factor, factor < 2 ? 2 : 1)} times`
}

/** What decided it: what there was least of. */
export const scaledBy = ({ by, id }: Pick<CodeFrom, 'by' | 'id'>): string => {
  if (by === 'plant') return `to use up your ${id === null ? 'plants' : plantName(id)}`
  return by === 'bottles' ? 'to fill your bottles' : 'scaled to your spirit so it tastes as strong'
}
