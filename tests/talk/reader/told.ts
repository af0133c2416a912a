import type { Invocation } from '../../../bot/calls/invocation.ts'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { hear } from '../../../bot/chat/hear/hear.ts'
import type { Heard } from '../../../bot/chat/hear/heard.ts'
import { type LastReplies, newLastReplies } from '../../../bot/chat/last-replies.ts'
import type { Hunch } from '../../../bot/talk/hunch/hunch.ts'
import { newTalkMemory, type TalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { en } from '../../../bot/text/en/index.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Person } from '../../../store/person.ts'
import type { Store } from '../../../store/store.ts'
import { newAsker } from '../../bot/asker.ts'
import { commands } from '../../bot/test-desk.ts'
import type { Sentence } from '../corpus.ts'
import { SHELVES, type Shelf } from '../shelves.ts'

/** Noon of a day in late November, when the society's shelf is half full. */
export const NOW_MS = Date.UTC(2026, 10, 29, 12)

/** What was said before, where the corpus tells it in words. */
const BEFORE: Readonly<Record<string, { readonly shelf?: Shelf; readonly lines?: readonly string[] }>> = {
  'a syrup answer in ml': { lines: ['/syrup infusion:920 ml strength:82% to-strength:30% to-sweetness:190 g/L'] },
  'jars running': { shelf: 'lemon_ginger' },
  'a finished lemon batch in the notebook': { shelf: 'lemon_bottled' },
  'jar limone is running': { lines: ['/jar start limone of:10 lemons spirit:1 l 95% when:12 days ago'] },
}

/** What a sentence was answered with, as a script would see it. */
export interface Told {
  readonly read: string | null
  /** The exact line, taken apart; null where none was read. */
  readonly call: Invocation | null
  readonly command: string | null
  readonly code: string | null
  readonly data: Readonly<Record<string, unknown>>
  /** The keys of what is said beside it. */
  readonly notes: readonly string[]
  readonly choices: readonly string[]
  /** What else the sentence told of, each answered by itself. */
  readonly also: readonly Pick<Told, 'read' | 'call' | 'command' | 'code' | 'data'>[]
  /** Entries that were written down by it, in all jars; one less for each that is gone. */
  readonly recorded: number
  readonly erased: boolean
  readonly ms: number
}

const parsed = (read: string): Invocation | null => {
  try {
    return parseLine(read, commands)
  } catch {
    return null
  }
}

const answeredWith = ({ outcome, read }: Pick<Heard, 'outcome' | 'read'>) => ({
  read,
  call: read === null ? null : parsed(read),
  command: outcome.path,
  code: outcome.ok ? null : outcome.error.code,
  notes: outcome.ok && 'reply' in outcome ? outcome.reply.notes.map(({ key }) => key) : [],
  data: outcome.ok && 'reply' in outcome ? (outcome.reply.data as Readonly<Record<string, unknown>>) : {},
})

/** What was said so far: what is remembered of it, what was answered and which faults of ours were logged. */
interface SaidBefore {
  readonly talk: readonly Parameters<TalkMemory['keep']>[]
  readonly replies: readonly Parameters<LastReplies['keep']>[]
  readonly faults: readonly string[]
}

/** Somebody at the terminal whose talk goes on from line to line, after what was said before. */
export function talker(store: Store = memoryStore('UTC'), before: SaidBefore = { talk: [], replies: [], faults: [] }) {
  const faults = [...before.faults]
  const [memory, answered] = [newTalkMemory(), newLastReplies()]
  const kept = { talk: [...before.talk], replies: [...before.replies] }
  for (const each of kept.talk) memory.keep(...each)
  for (const each of kept.replies) answered.keep(...each)
  const talk: TalkMemory = {
    ...memory,
    keep(...said) {
      kept.talk.push(said)
      memory.keep(...said)
    },
  }
  const replies: LastReplies = {
    ...answered,
    keep(...reply) {
      kept.replies.push(reply)
      answered.keep(...reply)
    },
  }
  let nowMs = NOW_MS
  const dispatch = (hunch?: Hunch) => ({
    ...newAsker(),
    store,
    language: en,
    commands,
    nowMs,
    talk,
    replies,
    log: (text: string) => faults.push(text),
    ...(hunch !== undefined && { hunch }),
  })
  const counted = async () => {
    const { jars } = await store.read('local')
    return { jars: jars.length, entries: jars.reduce((sum, { entries }) => sum + entries.length, 0) }
  }
  return {
    faults: faults as readonly string[],
    store,
    /** What has been said until now. */
    said: (): SaidBefore => ({ ...kept, faults }),
    hear: (line: string) => hear(line, dispatch()),
    /** So many minutes later. */
    wait(minutes: number): void {
      nowMs += minutes * 60_000
    },
    async say(line: string, hunch?: Hunch): Promise<Told> {
      const before = await counted()
      const begin = performance.now()
      const { also = [], ...heard } = await hear(line, dispatch(hunch))
      const { choices } = heard
      const ms = performance.now() - begin
      const after = await counted()
      return {
        ...answeredWith(heard),
        choices,
        also: also.map(answeredWith),
        recorded: after.entries - before.entries,
        erased: after.jars < before.jars,
        ms,
      }
    },
  }
}

interface Made {
  readonly person: Person
  readonly before: SaidBefore
}

/** What lines make of an empty folder, worked out once. */
const madeBy = new Map<string, Promise<Made>>()

function madeOf(lines: readonly string[]): Promise<Made> {
  const key = lines.join('\n')
  const made = madeBy.get(key) ?? makeOf(lines)
  madeBy.set(key, made)
  return made
}

async function makeOf(lines: readonly string[]): Promise<Made> {
  const one = await talkerAfter(lines.slice(0, -1))
  for (const line of lines.slice(-1)) await one.say(line)
  return { person: await one.store.read('local'), before: one.said() }
}

async function talkerAfter(lines: readonly string[]) {
  if (lines.length === 0) return talker()
  const { person, before } = await madeOf(lines)
  const store = memoryStore('UTC')
  await store.update('local', () => person)
  return talker(store, before)
}

/** A talker with the shelf and the lines before a sentence of the corpus. */
export function talkerFor({ after, shelf }: Pick<Sentence, 'after' | 'shelf'>) {
  const told = after === null ? undefined : BEFORE[after]
  const jars = shelf ?? told?.shelf
  const onShelf = jars === undefined ? [] : SHELVES[jars]
  return talkerAfter([...onShelf, ...(told?.lines ?? (after === null || told !== undefined ? [] : [after]))])
}
