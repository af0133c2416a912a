import { z } from 'zod'
import { DomainError } from '../../core/domain-error.ts'
import { ofTexts } from '../../core/once.ts'

/** A word that an option's parser takes; every language has its own for it. */
export type ChoiceWord =
  | ('yes' | 'no')
  | ('metric' | 'us' | 'imperial' | 'as typed')
  | ('uk' | 'eu')
  | ('daily' | 'every other day' | 'off')
  | ('here' | 'private')
  | ('json' | 'csv')
  | ('layer' | 'top-up')
  | (1 | 2 | 3 | 4 | 5)

/** A value and the text for it: what was typed, or what is written for a value of our own. */
export interface Given<Quantity> {
  readonly typed: string
  readonly is: Quantity
}

/** What is offered to somebody who is typing an option; `jars` and `botanicals` may be several, joined with `+`. */
export type Suggested =
  | 'jar'
  | 'jar_or_all'
  | 'jars'
  | 'botanicals'
  | 'country'
  | 'zone'
  | 'command'
  | 'share'
  | 'symptom'
  | Amount

/** What can be typed freely, so that it is looked through as any text is. */
export type Amount = (typeof AMOUNTS)[number]

const AMOUNTS = ['sweetness', 'past', 'until', 'entry', 'bottles'] as const

export const isAmount = (suggested: Suggested | undefined): suggested is Amount =>
  AMOUNTS.some((each) => each === suggested)

/** What a surface can know of an option's text before it is read. */
export interface OptionText {
  /** Where the text is one of a few. */
  readonly choices?: readonly ChoiceWord[]
  readonly suggested?: Suggested
  /** The text names a file: a path in the terminal, one that is sent along in Discord. */
  readonly isFile?: boolean
  /** It names a jar or a symptom: first in a line, it goes without the option's name. */
  readonly isName?: boolean
  /** Characters at most; left out, as many as a usual amount may need. */
  readonly most?: number
}

/** How an option's text is read, and how a value is written so that it is read as the same: `read(write(value))` is `value`. */
interface Reading<Quantity> {
  /** By the text alone. Throws a DomainError, which becomes the option's problem. */
  readonly read: (text: string) => Quantity
  readonly write: (value: Quantity) => string
}

type Known = OptionText & { readonly write: (value: never) => string }

const registry = z.registry<Known>()

const isText = (value: unknown): value is string | Given<unknown> =>
  typeof value === 'string' || (typeof value === 'object' && value !== null && 'typed' in value && 'is' in value)

/** An option of a command, which takes a text or a value that was read before. */
export const option = <Quantity>({ read, write, ...text }: Reading<Quantity> & OptionText) => {
  const readOfLate = ofTexts(read)
  const schema = z.custom<string | Given<Quantity>>(isText).transform((given, context): Given<Quantity> => {
    if (typeof given !== 'string') return given
    try {
      return { typed: given, is: readOfLate(given) }
    } catch (error) {
      if (!(error instanceof DomainError)) throw error
      context.addIssue({ code: 'custom', message: error.message, params: { error } })
      return z.NEVER
    }
  })
  registry.add(schema, { ...text, write })
  return schema
}

const knownOf = (schema: unknown): Known | undefined => {
  const inner = schema instanceof z.ZodOptional ? schema.unwrap() : schema
  return inner instanceof z.ZodType ? registry.get(inner) : undefined
}

/** What was said of an option's text, whether it may be left out or not; nothing of what is no option. */
export const optionTextOf = (schema: unknown): OptionText => knownOf(schema) ?? {}

/** A value with the text that an option reads as it. Throws a RangeError where there is none, which is a fault of ours. */
export function givenFor(schema: unknown, value: unknown): Given<unknown> {
  const known = knownOf(schema)
  if (known === undefined) throw new TypeError('no option of a command')
  return { typed: known.write(value as never), is: value }
}

/** Whether an option has to be given. */
export const isRequired = (schema: z.core.$ZodType): boolean => !z.safeParse(schema, undefined).success

/** What `work` throws becomes the problem of an option that only the person's settings could read. */
export const asOptionProblem = <Result>(name: string, work: () => Result): Result => {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    throw new z.ZodError([{ code: 'custom', input: name, message: error.message, path: [name], params: { error } }])
  }
}
