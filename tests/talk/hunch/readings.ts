import type { Path } from '../../../bot/calls/signatures.ts'
import type { TalkReading } from '../../../bot/talk/frames/reading.ts'
import type { Aim, Leaning } from '../../../bot/talk/hunch/hunch.ts'
import type { Otherwise } from '../../../bot/talk/reader/second-thought.ts'

export const callTo = (command: Path): TalkReading & { kind: 'call' } => ({
  kind: 'call',
  call: { command, options: { of: '14 lemons' } },
  leftOut: [],
  does: 'compute',
})
export const TOPIC: TalkReading = { kind: 'topic', entry: 'peeled_fruit', more: [] }
export const NOTHING: Otherwise = { call: () => null, handbook: () => null, trouble: () => null, follow: () => null }
export const FOUND: Otherwise = { ...NOTHING, handbook: () => TOPIC }

export const FREELY = { isPlain: () => false, isAsked: false, isNowhere: false }

/** With its own aim among those that are known. */
export const leaning = (shares: Readonly<Partial<Record<Aim, number>>>): readonly Leaning[] =>
  Object.entries(shares).map(([aim, share]) => ({ aim: aim as Aim, share }))
