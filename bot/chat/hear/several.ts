import type { TalkReading } from '../../talk/frames/reading.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { answered } from './answered.ts'
import type { Heard, Understood } from './heard.ts'
import { remember } from './remember.ts'

/** What one of several is read as, by what is known once the ones before are done. */
export type ReadNow = (text: string) => Promise<TalkReading>

/** The deeds of one sentence, one at least, done in order, each read once the one before is written down. */
export async function several(
  parts: readonly string[],
  read: ReadNow,
  dispatch: Dispatch,
  place: string,
): Promise<Heard> {
  const all: Heard[] = []
  for (const part of parts) {
    const reading = await read(part)
    const understood: Understood = { heard: await answered(part, reading, dispatch, place), reading }
    remember(understood, dispatch, place)
    all.push(understood.heard)
  }
  const [first, ...also] = all
  return also.length === 0 ? first! : { ...first!, also }
}
