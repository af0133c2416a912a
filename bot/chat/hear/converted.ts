import type { Assumption } from '../../../core/quantity/quantities.ts'
import type { ConvertedSaid } from '../../talk/frames/reading.ts'
import type { Reply } from '../reply.ts'

/** How what is poured was weighed. */
const BY_VOLUME: ReadonlySet<Assumption> = new Set(['sugar_by_volume', 'brown_by_volume', 'syrup_by_volume'])

/** An amount in the unit that was asked for. */
export const converted = ({ assumed, ...said }: ConvertedSaid): Reply => ({
  headline: { group: 'headlines', key: 'talk_converted', values: said },
  table: [],
  sure: [],
  notes: assumed.flatMap((key) => (BY_VOLUME.has(key) ? { group: 'notes', key, values: undefined } : [])),
  cautions: [],
  actions: [],
  data: { said: 'talk_converted', ...said },
  kitchen: 'metric',
})
