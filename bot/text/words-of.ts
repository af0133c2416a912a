import type { en } from './en/index.ts'
import type { Format } from './format.ts'
import type { Words } from './words.ts'

type Language = typeof en
type Sentence = (values: unknown, format: Format) => string

/** The words of a language: finds the sentence by its key and hands it its values. */
export const wordsOf = ({ sentences, problems, format }: Language): Words => ({
  say: (message, kitchen) => {
    const group: Readonly<Record<string, unknown>> = sentences[message.group]
    return (group[message.key as string] as Sentence)(message.values, format(kitchen))
  },
  problem: (key, values, kitchen) => (problems[key] as Sentence)(values, format(kitchen)),
})
