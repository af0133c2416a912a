import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import { isStrengthUnknown } from '../household/strength-open.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import type { Remembered } from '../memory/remembered.ts'

const LIQUID: ReadonlySet<TalkJar['stage']> = new Set(['strained', 'sweetened', 'resting', 'ready'])

/** `No idea how strong it is`, of a jar that was strained: what went in tells it. Null where a deed or an amount is told with it. */
export function strengthUnknown(sentence: Sentence, { call, step }: Remembered): TalkReading | null {
  const { typed, bits, jars, has } = sentence
  if (!isStrengthUnknown(typed.text) || has(...DEEDS)) return null
  if (bits.some(({ kind }) => kind !== 'jar' && kind !== 'plant')) return null
  const running = runningAmong(jars).filter(({ stage }) => LIQUID.has(stage))
  const [named] = jarsNamed(bits, running)
  if (named === undefined && bits.length > 0) return null
  const spoken = jarCalled(call?.options.jar, running) ?? jarCalled(step?.options.jar, running)
  const jar = named?.jar ?? spoken ?? (running.length === 1 ? running[0] : undefined)
  if (jar === undefined) return null
  const measure = { command: 'measure', options: { jar: jar.name } } as const
  return { kind: 'call', call: measure, does: 'compute', leftOut: [], isStrengthOpen: true }
}
