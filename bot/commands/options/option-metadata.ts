import { z } from 'zod'
import type { choiceWords } from '../../text/en/discord.ts'

/** A word that an option's parser takes; every language has its own for it. */
export type ChoiceWord = keyof typeof choiceWords

/** What is offered to somebody who is typing an option; `jars` and `botanicals` may be several, joined with `+`. */
export type Suggested = 'jar' | 'jar_or_all' | 'jars' | 'botanicals' | 'country' | 'zone' | 'command' | 'share' | Amount

/** What can be typed freely, so that it is looked through as any text is. */
export type Amount = (typeof AMOUNTS)[number]

const AMOUNTS = ['sweetness', 'past', 'until', 'entry', 'bottles'] as const

export const isAmount = (suggested: Suggested | undefined): suggested is Amount =>
  AMOUNTS.some((each) => each === suggested)

/** What a surface can know of an option's text before it is read. */
export interface Takes {
  /** Where the text is one of a few. */
  readonly choices?: readonly ChoiceWord[]
  readonly suggested?: Suggested
  /** The text names a file: a path in the terminal, one that is sent along in Discord. */
  readonly isFile?: boolean
  /** Characters at most; left out, as many as a usual amount may need. */
  readonly most?: number
}

const registry = z.registry<Takes>()

/** Says what a schema takes, beside what it reads. */
export const taking = <Schema extends z.ZodType>(schema: Schema, takes: Takes): Schema => {
  registry.add(schema, takes)
  return schema
}

/** What was said of an option's schema, whether it may be left out or not. */
export const takesOf = (schema: unknown): Takes => {
  const inner = schema instanceof z.ZodOptional ? schema.unwrap() : schema
  return (inner instanceof z.ZodType && registry.get(inner)) || {}
}

/** Whether an option has to be given. */
export const isRequired = (schema: z.core.$ZodType): boolean => !z.safeParse(schema, undefined).success
