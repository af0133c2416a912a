import type { Format } from './format.ts'
import type { Language } from './language.ts'
import type { Kitchen } from './messages/kitchen.ts'
import type { Words } from './words.ts'

type Sentence = (values: unknown, format: Format) => string

/** What is said in sentences, which begin with a capital; `oz` and `lemon` in a cell or on a button do not. */
const SPOKEN: ReadonlySet<string> = new Set(['headlines', 'notes', 'cautions'])

/** A jar’s name that begins a sentence is written as any word there. */
const begun = (text: string): string => text.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase())

/**
 * The words of a language: finds the sentence by its key and hands it its values.
 *
 * @param adapt - what a surface shows in another way than the language writes it
 */
export const wordsOf = (
  { sentences, problems, format, pictures }: Language,
  adapt: (format: Format) => Format = (written) => written,
): Words => {
  const formatIn = (kitchen: Kitchen): Format => {
    const own: Format = { ...adapt(format(kitchen)), in: (other) => (other === undefined ? own : formatIn(other)) }
    return own
  }
  return {
    say: (message, kitchen) => {
      const group: Readonly<Record<string, unknown>> = sentences[message.group]
      const text = (group[message.key as string] as Sentence)(message.values, formatIn(kitchen))
      return SPOKEN.has(message.group) ? begun(text) : text
    },
    line: (call) => formatIn('metric').call(call),
    problem: (key, values, kitchen) => begun((problems[key] as Sentence)(values, formatIn(kitchen))),
    onPictures: (kitchen) => ({ text: pictures, format: format(kitchen) }),
  }
}
