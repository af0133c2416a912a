import { ALL, type HelpPage, toldFirst } from '../../chat/run/help-page.ts'
import type { FirstLine } from '../../text/help-text.ts'
import { columns } from './columns.ts'
import type { TerminalLanguage } from './language-for-terminal.ts'
import { joinBlocks } from './render.ts'
import type { Screen } from './screen.ts'
import { hang, wrap } from './wrap.ts'

/** Lines to type, each with what it is for below it. */
const linesShown = (lines: readonly FirstLine[], width: number): readonly string[] =>
  lines.flatMap(({ line, what }) => [`  ${line}`, ...hang('    ', what, width)])

/** Help for a terminal: where to begin, commands with a line each, or one with its options and examples. */
export const renderHelp = (page: HelpPage, speech: TerminalLanguage, { width }: Screen): string => {
  const { console, help } = speech
  if (page.topics !== undefined) {
    const topics = [
      ...page.topics.map((topic) => [topic, help.topics[topic]] as const),
      [ALL, help.everything()] as const,
    ]
    return joinBlocks([
      [help.startHere(), ...linesShown(page.firstLines ?? help.first(), width)],
      [
        help.byTopic(),
        ...columns(
          topics.map(([topic, text]) => [`/help ${topic}`, text] as const),
          width,
        ),
      ],
      wrap(help.oneCommand(), width),
    ])
  }
  const rest = page.first === undefined ? [] : wrap(help.rest(page.first.rest), width)
  if (page.lines !== undefined) {
    const also = page.first === undefined ? [] : wrap(help.also(page.first.rest), width)
    return joinBlocks([linesShown(page.lines, width), also])
  }
  const entries = toldFirst(page)
  const [entry] = entries
  if (page.topic === null || entry === undefined) {
    const rows = entries.map(({ command, summary }) => [`/${command}`, summary] as const)
    return joinBlocks([
      [console.commands(), ...columns(rows, width)],
      rest.length > 0 ? rest : wrap(console.more(), width),
    ])
  }
  const options = entry.options.map(({ name, text, required }) => [`${name}:`, console.option(text, required)] as const)
  return joinBlocks([
    wrap(`/${entry.command}: ${entry.summary}`, width),
    options.length === 0 ? [] : [console.options(), ...columns(options, width)],
    entry.examples.length === 0 ? [] : [console.examples(), ...entry.examples.map((line) => `  ${line}`)],
    [...rest, ...(page.also === undefined ? [] : wrap(help.also(page.also), width))],
  ])
}
