import type { TalkReading } from '../../talk/frames/reading.ts'
import type { Dispatch } from '../run/execute.ts'
import { answered } from './answered.ts'
import type { Understood } from './hear.ts'
import type { Heard } from './heard.ts'
import { remember } from './remember.ts'

/** What one of several is read as, by what is known once the ones before are done. */
export type ReadNow = (text: string) => Promise<TalkReading>

/** Answered by themselves: deeds, what they lack, and what is worked out of them. */
const isOne = ({ kind }: TalkReading): boolean => kind === 'call' || kind === 'question'

/**
 * Several deeds of one sentence, done in order, each read once the one before is written down. Null where one of them is not
 * understood by itself: then the sentence is read as a whole.
 */
export async function several(
  parts: readonly string[],
  read: ReadNow,
  dispatch: Dispatch,
  place: string,
): Promise<Heard | null> {
  const tried = await Promise.all(parts.map(read))
  if (!tried.every(isOne)) return null
  const all: Heard[] = []
  for (const part of parts) {
    const reading = await read(part)
    const understood: Understood = { heard: await answered(part, reading, dispatch, place), reading }
    remember(understood, dispatch, place)
    all.push(understood.heard)
  }
  const [first, ...also] = all
  return first === undefined ? null : also.length === 0 ? first : { ...first, also }
}
