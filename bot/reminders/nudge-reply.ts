import { allDuties } from '../../core/jar/duties.ts'
import type { Duty, DutyKind } from '../../core/jar/duty.ts'
import { type Story, storyOf } from '../../core/jar/story.ts'
import { type IsoDay, isoDay } from '../../core/quantity/calendar.ts'
import { dayAt } from '../../core/quantity/zone.ts'
import { dutySettings } from '../../store/due.ts'
import type { Nudge, Person } from '../../store/person.ts'
import type { Reply } from '../chat/reply.ts'
import type { Message } from '../text/words.ts'
import type { Now } from './intend.ts'
import { jarSaid } from './jar-said.ts'
import { nudgeActions } from './nudge-actions.ts'

/** A jar and the latest of its reminders of one kind: missed days are one. */
export interface Asked {
  readonly jarId: string
  readonly story: Story
  readonly duty: Duty
  readonly isLast: boolean
}

/** The order in which a nudge speaks. */
const KINDS: readonly DutyKind[] = ['shake', 'taste', 'add', 'strain', 'sweeten', 'filter', 'bottle', 'ready']

/** Shaking is asked for so often that its end is worth a sentence; these too say when they are the last. */
const SAYS_LAST: readonly DutyKind[] = ['shake', 'strain', 'sweeten']

function askedOf(person: Person, nudge: Nudge, assumedZone: string): readonly Asked[] {
  const settings = dutySettings(person.settings, assumedZone)
  return person.jars.flatMap(({ id: jarId, entries }) => {
    const story = storyOf(entries)
    const keys = new Set(nudge.duties.filter((duty) => duty.jarId === jarId).map(({ key }) => key))
    const said = allDuties(entries, settings).filter(({ key }) => keys.has(key))
    return KINDS.flatMap((kind) => {
      const same = said.filter((duty) => duty.kind === kind)
      const duty = same.at(-1)
      return story === null || duty === undefined
        ? []
        : [{ jarId, story, duty, isLast: same.some(({ isLast }) => isLast) }]
    })
  })
}

const headlineOf = (asked: readonly Asked[], today: IsoDay): Message<'headlines'> => {
  const kinds = KINDS.filter((kind) => asked.some(({ duty }) => duty.kind === kind))
  const jarsOf = (kind: DutyKind) => asked.filter(({ duty }) => duty.kind === kind).map(jarSaid)
  const values = { asked: kinds.map((duty) => ({ duty, jars: jarsOf(duty) })), today }
  return { group: 'headlines', key: 'nudge', values }
}

function notesOf(asked: readonly Asked[], mayHaveBeenSeen: boolean): readonly Message<'notes'>[] {
  const how = (['taste', 'strain'] as const).filter((kind) => asked.some(({ duty }) => duty.kind === kind))
  const last = SAYS_LAST.map((duty) => ({
    duty,
    names: asked.filter((each) => each.isLast && each.duty.kind === duty).map(({ story }) => story.name),
  }))
  const notes = [
    ...(mayHaveBeenSeen ? [{ group: 'notes', key: 'nudge_seen', values: undefined }] : []),
    ...how.map((duty) => ({ group: 'notes', key: 'nudge_how', values: { duty } })),
    ...last.flatMap((values) => (values.names.length === 0 ? [] : [{ group: 'notes', key: 'nudge_last', values }])),
  ]
  return notes as readonly Message<'notes'>[]
}

/** What a nudge says: what to do today, how, what to answer. */
export function nudgeReply(person: Person, nudge: Nudge, mayHaveBeenSeen: boolean, { nowMs, assumedZone }: Now): Reply {
  const asked = askedOf(person, nudge, assumedZone)
  const today = isoDay(dayAt(person.settings.zone ?? assumedZone, nowMs))
  return {
    headline: headlineOf(asked, today),
    table: [],
    sure: [],
    notes: notesOf(asked, mayHaveBeenSeen),
    cautions: [],
    actions: nudgeActions(asked, nudge.place),
    data: { duties: asked.map(({ jarId, duty }) => ({ jar: jarId, duty: duty.kind, day: duty.day })) },
    kitchen: 'metric',
  }
}
