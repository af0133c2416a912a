import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const FOLDER = join(import.meta.dirname, 'sessions')

/** One line of a session. */
export type Step =
  | { readonly kind: 'clock'; readonly nowMs: number }
  /** The bot is started anew, says what is due, and goes on. */
  | { readonly kind: 'remind' }
  | { readonly kind: 'line'; readonly line: string }
  /** What is done with a message in Discord: `press Shaken`, `fill rating=4`, `choose Europe/Rome`, `as sorrel`. */
  | { readonly kind: 'act'; readonly line: string }

export interface Numbered {
  readonly step: Step
  /** Of the file, from 1. */
  readonly lineNumber: number
}

/** Lines that are typed one after the other, beginning with an empty folder of data. */
export interface Session {
  readonly name: string
  readonly file: string
  readonly isInDiscord: boolean
  readonly steps: readonly Numbered[]
}

const stepOf = (text: string): Step => {
  const [, day, time] = /^@ (\d{4}-\d\d-\d\d) (\d\d:\d\d)$/.exec(text) ?? []
  if (day !== undefined) return { kind: 'clock', nowMs: Date.parse(`${day}T${time}:00Z`) }
  if (text === '~') return { kind: 'remind' }
  return text.startsWith('! ') ? { kind: 'act', line: text.slice(2) } : { kind: 'line', line: text }
}

const sessionsIn = (file: string): readonly Session[] => {
  const sessions: { name: string; file: string; isInDiscord: boolean; steps: Numbered[] }[] = []
  for (const [index, text] of readFileSync(join(FOLDER, file), 'utf8').split('\n').entries()) {
    const [, name, where] = /^== (.*?)( in Discord)?$/.exec(text) ?? []
    if (name !== undefined) sessions.push({ name, file, isInDiscord: where !== undefined, steps: [] })
    else if (text.trim() !== '' && !text.startsWith('#'))
      sessions.at(-1)!.steps.push({ step: stepOf(text), lineNumber: index + 1 })
  }
  return sessions
}

/** All that are kept, in the order of their files. */
export const readSessions = (): readonly Session[] =>
  readdirSync(FOLDER)
    .filter((file) => file.endsWith('.txt'))
    .toSorted()
    .flatMap(sessionsIn)
