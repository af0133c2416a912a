import type { Format } from './format.ts'
import type { Language } from './language.ts'
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
): Words => ({
  say: (message, kitchen) => {
    const group: Readonly<Record<string, unknown>> = sentences[message.group]
    return (group[message.key as string] as Sentence)(message.values, adapt(format(kitchen)))
  },
  line: (call) => adapt(format('metric')).call(call),
  problem: (key, values, kitchen) => (problems[key] as Sentence)(values, adapt(format(kitchen))),
  onPictures: (kitchen) => ({ text: pictures, format: format(kitchen) }),
})
