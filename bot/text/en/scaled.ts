import type { Format } from '../format.ts'
import type { CodeFrom } from '../messages/share.ts'
import { plantName } from './cook-names.ts'

/** A jug tells no more of it. */
const NEAR = 0.03

/** `about the same amounts as lemon`, `half the amounts of lemon`, `92 % of the amounts of lemon`. */
export function amountsScaled(factor: number, whose: string, { plain }: Pick<Format, 'plain'>): string {
  return Math.abs(factor - 1) < NEAR ? `about the same amounts as ${whose}` : `${timesThe(factor, plain)} of ${whose}`
}

function timesThe(factor: number, plain: Format['plain']): string {
  const percent = plain(100 * factor, factor < 0.1 ? 1 : 0)
  if (percent === '50') return 'half the amounts'
  if (percent === '200') return 'twice the amounts'
  return factor < 1 ? `${percent}\u00a0% of the amounts` : `${plain(factor, factor < 2 ? 2 : 1)} times the amounts`
}

/** What decided it: what there was least of. */
export const scaledBy = ({ by, id }: Pick<CodeFrom, 'by' | 'id'>): string => {
  if (by === 'plant') return `to use up your ${id === null ? 'plants' : plantName(id)}`
  return by === 'bottles' ? 'to fill your bottles' : 'scaled to your spirit so it tastes as strong'
}
