import { DomainError } from '../../../core/domain-error.ts'
import type { Sentence } from '../bits/bit.ts'
import { isOver, jarCalled, jarsOf } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'

/** Whether a name is of none of the jars, though one’s name may begin so: `rose`, where there is `rosemary`. */
function isOfNone(name: string, { bits, jars }: Sentence): boolean {
  const said = name.toLowerCase()
  if (said === 'all' || jarCalled(name, jars) !== undefined) return false
  const plant = bits.find(({ kind, text }) => kind === 'plant' && text.toLowerCase() === said)
  if (plant !== undefined) return jarsOf(plant, jars).length === 0
  return !jars.some((jar) => jar.name.toLowerCase().startsWith(said))
}

/** Nothing is recorded of a jar that is not there, nor asked about; it is never taken for another one. */
export function jarNotThere(reading: TalkReading, sentence: Sentence): TalkReading {
  const isDeed =
    (reading.kind === 'call' && (reading.does === 'record' || reading.call.command === 'jar show')) ||
    (reading.kind === 'question' && (reading.about.kind === 'lacks' || reading.about.kind === 'told_or_asked'))
  if (!isDeed || !/^(?:jar |bottles$)/.test(reading.call.command) || sentence.jars.every(isOver)) return reading
  const { jar } = reading.call.options
  if (jar === undefined || reading.call.command === 'jar start' || !isOfNone(jar, sentence)) return reading
  const begins = sentence.jars.some(({ name }) => name.toLowerCase().startsWith(jar.toLowerCase()))
  if (reading.kind === 'call' && !begins) return reading
  return { kind: 'refused', problem: new DomainError('not_found', 'no_such_jar', { typed: jar, nearest: null }) }
}
