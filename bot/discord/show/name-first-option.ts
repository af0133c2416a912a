import { quoted } from '../../calls/write-line.ts'
import { HELP } from '../../chat/run/help-page.ts'
import type { CommandText } from '../../text/command-text.ts'

/** Writes lines as they can be sent in Discord, where no option goes without its name: `/jar show jar:lemon`. */
export interface NamedLines {
  line(line: string): string
  /** The lines within a sentence, as far as they are made of the sentence's values or are its own examples; what somebody typed stays. */
  sentence(text: string, values: unknown): string
}

const OPTION = /^[\p{L}_][\p{L}\p{M}\p{N}_-]*:/u

/** What may follow the value of a line. */
const ENDED = /^(?![\p{L}\p{M}\p{N}])/u

/** Every text in a sentence's values. */
const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return value === '' ? [] : [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : []
}

/** @param commands - the texts of the commands, whose options stand in the commands' own order */
export function namedLines(commands: Readonly<Record<string, CommandText>>): NamedLines {
  const firsts = new Map([[HELP, 'command']])
  for (const [path, { options }] of Object.entries(commands)) {
    const [first] = Object.keys(options)
    if (first !== undefined) firsts.set(path, first)
  }
  const options = [...new Set(Object.values(commands).flatMap((command) => Object.keys(command.options)))].join('|')
  // Up to the name of an option only a line is made of words without a mark of the sentence.
  const withOption = new RegExp(`^[^/:?!“”\\n]+ (?:${options}):\\S`, 'u')
  const paths = [...firsts.keys()].toSorted((one, other) => other.length - one.length).join('|')
  const begins = new RegExp(`^/(${paths}) (?=\\S)`)
  const within = new RegExp(`(?<![\\p{L}\\p{N}/“])/(${paths}) (?=\\S)`, 'gu')
  const line = (text: string): string => {
    const [begin = '', path = ''] = begins.exec(text) ?? []
    const rest = text.slice(begin.length)
    return begin === '' || OPTION.test(rest) ? text : `${begin}${firsts.get(path)}:${rest}`
  }
  return {
    line,
    sentence(text, values) {
      if (!text.includes('/')) return text
      const texts = textsIn(values)
      const isGiven = (rest: string): boolean =>
        texts.some((each) =>
          [each, quoted(each)].some((value) => rest.startsWith(value) && ENDED.test(rest.slice(value.length))),
        )
      return text.replace(within, (begin: string, path: string, at: number) => {
        const rest = text.slice(at + begin.length)
        const isLine = texts.some((each) => each.startsWith(begin) && text.startsWith(each, at))
        // An example of the sentence's own, and nothing that somebody typed.
        const isOwn = withOption.test(rest) && !texts.some((each) => each.includes(begin))
        return !OPTION.test(rest) && (isLine || isOwn || isGiven(rest)) ? `${begin}${firsts.get(path)}:` : begin
      })
    },
  }
}
