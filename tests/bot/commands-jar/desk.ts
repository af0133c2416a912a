import type { Reply } from '../../../bot/chat/reply.ts'
import { viewOf } from '../../../bot/commands/jar/known/view-of.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { newAsker, type TestAsker } from '../asker.ts'
import { startLine } from '../start-line.ts'
import { speech, testDesk } from '../test-desk.ts'

/** What `ask --json` prints for a step of a jar. */
export interface StepJson {
  readonly data: { readonly [name: string]: unknown }
  readonly notes: readonly { readonly key: string; readonly text: string }[]
  readonly cautions: readonly { readonly key: string; readonly text: string }[]
  readonly error?: { readonly code: string; readonly message: string; readonly option?: string }
}

export const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'

/** Somebody with a clock that is set by hand, at noon of days in UTC unless an instant is given. */
export const jarDesk = (day = '2026-11-01', asker: TestAsker = newAsker()) => {
  let nowMs = 0
  const at = (text: string) => {
    nowMs = Date.parse(text.includes('T') ? text : `${text}T12:00:00Z`)
  }
  at(day)
  const desk = () => testDesk({ nowMs, asker, width: 200 })
  const anyOf = async (line: string): Promise<StepJson> => {
    const used = desk()
    const json = (await used.jsonOf(line)) as StepJson
    const faults = used.faults()
    if (faults.length > 0) throw new Error(`${line} → ${faults.join()}`)
    return json
  }
  const replyOf = async (line: string): Promise<Reply> => {
    const outcome = await desk().run(line)
    if (!outcome.ok) throw new Error(`${line} → ${outcome.error.problem}`)
    return outcome.reply
  }
  return {
    asker,
    at,
    anyOf,
    /** The line that starts what a line plans. */
    startLine: (line: string): Promise<string> => startLine(desk(), line),
    /** The JSON of a line that has to be answered. */
    ask: async (line: string): Promise<StepJson> => {
      const json = await anyOf(line)
      if (json.error !== undefined) throw new Error(`${line} → ${json.error.code}: ${json.error.message}`)
      return json
    },
    /** The problem of a line that has to be refused. */
    refused: async (line: string) => {
      const { error } = await anyOf(line)
      if (error === undefined) throw new Error(`${line} was answered`)
      return error
    },
    textOf: (line: string): Promise<string> => desk().textOf(line),
    /** The headline of a line that has to be answered, as a message. */
    headlineOf: async (line: string): Promise<Reply['headline']> => (await replyOf(line)).headline,
    /** The reply to a line that has to be answered, as messages. */
    replyOf,
    /** Why a line is refused that has to be, by the key of the sentence. */
    problemOf: async (line: string) => {
      const outcome = await desk().run(line)
      if (outcome.ok) throw new Error(`${line} was answered`)
      return outcome.error
    },
    run: (line: string) => desk().run(line),
    /** What is said of the first picture of a reply that has one. */
    pictureSaid: async (line: string): Promise<string> => {
      const [picture] = (await replyOf(line)).files ?? []
      if (picture === undefined) throw new Error(`${line} has no picture`)
      return speech.words.say(picture.alt, 'metric').replaceAll('\u00a0', ' ')
    },
    person: () => asker.store.read(asker.userId),
    /** A running jar as commands and pictures see it. */
    viewOf: async (name: string) => {
      const { jars, settings } = await asker.store.read(asker.userId)
      const views = jars.flatMap((jar) => viewOf(jar, { nowMs, settings, assumedZone: asker.assumedZone }) ?? [])
      return views.find(({ story }) => story.name === name)!
    },
    storyOf: async (name: string) => {
      const { jars } = await asker.store.read(asker.userId)
      return jars.flatMap((jar) => jarStateOf(jar.entries) ?? []).find((story) => story.name === name)!
    },
  }
}

export const numberIn = ({ data }: StepJson, name: string): number => {
  const value = data[name]
  if (typeof value !== 'number') throw new Error(`no number ${name}`)
  return value
}

/** Days and kinds of a jar's entries, as the JSON tells them. */
export const eventsIn = ({ data }: StepJson) =>
  (data.events as readonly { readonly kind: string; readonly day: string; readonly entry: number }[]).map(
    ({ kind, day }) => `${day} ${kind}`,
  )
