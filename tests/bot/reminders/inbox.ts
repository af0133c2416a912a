import { closedPlaces } from '../../../bot/reminders/closed-places.ts'
import type { Delivery, NudgeFound, Sent, Surface } from '../../../bot/reminders/delivery.ts'
import { type Round, remind } from '../../../bot/reminders/remind.ts'
import { tick } from '../../../bot/reminders/tick.ts'
import { render } from '../../../bot/terminal/show/render.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Person, Place } from '../../../store/person.ts'
import type { Store } from '../../../store/store.ts'
import { speech } from '../test-desk.ts'
import { ZONE } from './people.ts'

export interface Received extends Delivery {
  readonly text: string
}

type Answer = Sent | Error

/** A surface that keeps what it was sent; `answer` and `found` may be changed on the way. */
export function inbox(usual: Place = { kind: 'console' }) {
  const received: Received[] = []
  const asked: string[] = []
  const box = {
    received,
    /** Ids of the nudges that somebody looked for. */
    asked,
    answer: (_delivery: Delivery): Answer => 'sent',
    found: (_id: string): NudgeFound => 'unknown',
    after: (_place: Place): Place | null => null,
    texts: (): readonly string[] => received.splice(0).map(({ text }) => text),
  }
  const surface: Surface = {
    placeOf: (_userId, chosen) => chosen ?? usual,
    after: (place) => box.after(place),
    async send(delivery) {
      const answer = box.answer(delivery)
      if (answer instanceof Error) throw answer
      if (answer !== 'sent') return answer
      const text = render(delivery.reply, speech, { width: 200, colour: false }, [], 'whole').replaceAll('\u00a0', ' ')
      received.push({ ...delivery, text })
      return answer
    },
    async findSent({ nudgeId }) {
      asked.push(nudgeId)
      return box.found(nudgeId)
    },
  }
  return { box, surface }
}

interface Setting {
  readonly people: Readonly<Record<string, Person>>
  readonly usual?: Place
  readonly store?: Store
}

/** A store with people, a surface, and a clock that is told. */
export async function world({ people, usual, store = memoryStore(ZONE) }: Setting) {
  for (const [userId, person] of Object.entries(people)) await store.update(userId, () => person)
  const { box, surface } = inbox(usual)
  const logged: string[] = []
  const closed = closedPlaces()
  const round = (nowMs: number): Round => ({
    store,
    nowMs,
    assumedZone: ZONE,
    surface,
    closed,
    log: (text) => {
      logged.push(text)
    },
  })
  return {
    store,
    box,
    surface,
    logged,
    round,
    tick: (nowMs: number) => tick(round(nowMs)),
    remind: (userId: string, nowMs: number) => remind(userId, round(nowMs)),
    change: (change: (person: Person) => Person, userId = 'local') => store.update(userId, change),
    person: (userId = 'local') => store.read(userId),
  }
}
