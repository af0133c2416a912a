import type { Format } from './format.ts'
import type { Language } from './language.ts'
import type { Kitchen } from './messages/kitchen.ts'
import type { Words } from './words.ts'

type Sentence = (values: unknown, format: Format) => string

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
      return (group[message.key as string] as Sentence)(message.values, formatIn(kitchen))
    },
    line: (call) => formatIn('metric').call(call),
    problem: (key, values, kitchen) => (problems[key] as Sentence)(values, formatIn(kitchen)),
    onPictures: (kitchen) => ({ text: pictures, format: format(kitchen) }),
  }
}
