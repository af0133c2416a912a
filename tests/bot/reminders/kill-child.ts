import { appendFileSync, existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Surface } from '../../../bot/reminders/delivery.ts'
import { tick } from '../../../bot/reminders/tick.ts'
import { openStore } from '../../../store/open/open-store.ts'
import { liveOneEvening, PEOPLE } from './kill-people.ts'
import { MINUTE_MS, ZONE } from './people.ts'

/**
 * Lives from `START_MS` on, half an hour after the other: in the evening things happen to the jars, every half hour comes a
 * pass of the reminders, which arrive in a file that survives this process. Prints a line whenever something is done;
 * never ends by itself. `FOLDER START_MS HISTORY`, where history is `readable` or not.
 */
const [folder = '', startMs = '', history = ''] = process.argv.slice(2)
const inbox = join(folder, 'inbox.txt')
let nowMs = Number(startMs)

const log = (text: string): void => console.error(text)
const store = openStore({ folder: join(folder, 'data'), assumedZone: ZONE, nowMs: () => nowMs, log })

const arrived = (): readonly string[] => (existsSync(inbox) ? readFileSync(inbox, 'utf8').split('\n') : [])

const surface: Surface = {
  placeOf: () => ({ kind: 'private' }),
  after: () => null,
  async send({ nudgeId, userId, reply, mayHaveBeenSeen }) {
    const { duties } = reply.data
    console.log('sending')
    appendFileSync(inbox, `${JSON.stringify({ nudgeId, userId, nowMs, mayHaveBeenSeen, duties })}\n`)
    console.log('sent')
    return 'sent'
  },
  async findSent({ nudgeId }) {
    if (history !== 'readable') return 'unknown'
    return arrived().some((line) => line.includes(`"${nudgeId}"`)) ? 'there' : 'absent'
  },
}

for (;;) {
  console.log(`now ${nowMs}`)
  if (new Date(nowMs).getUTCHours() === 20) {
    for (const userId of PEOPLE) {
      const { jars } = await store.update(userId, (person) => liveOneEvening(person, nowMs))
      console.log(`ack ${userId} ${jars.reduce((sum, { entries }) => sum + entries.length, 0)}`)
    }
  }
  await tick({ store, nowMs, assumedZone: ZONE, surface, log })
  nowMs += 30 * MINUTE_MS
}
