import { ALL, type HelpPage } from '../../chat/run/help.ts'
import { columns } from './columns.ts'
import type { TerminalLanguage } from './language-for-terminal.ts'
import { joinBlocks } from './render.ts'
import type { Screen } from './screen.ts'
import { hang, wrap } from './wrap.ts'

/** Help for a terminal: where to begin, commands with a line each, or one with its options and examples. */
export const renderHelp = (page: HelpPage, speech: TerminalLanguage, { width }: Screen): string => {
  const { console, help } = speech
  if (page.topics !== undefined) {
    const topics = [
      ...page.topics.map((topic) => [topic, help.topics[topic]] as const),
      [ALL, help.everything()] as const,
    ]
    return joinBlocks([
      [help.startHere(), ...help.first().flatMap(({ line, what }) => [`  ${line}`, ...hang('    ', what, width)])],
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
  const [entry] = page.entries
  if (page.topic === null || entry === undefined) {
    const rows = page.entries.map(({ command, summary }) => [`/${command}`, summary] as const)
    return joinBlocks([[console.commands(), ...columns(rows, width)], wrap(console.more(), width)])
  }
  const options = entry.options.map(({ name, text, required }) => [`${name}:`, console.option(text, required)] as const)
  return joinBlocks([
    wrap(`/${entry.command}: ${entry.summary}`, width),
    options.length === 0 ? [] : [console.options(), ...columns(options, width)],
    entry.examples.length === 0 ? [] : [console.examples(), ...entry.examples.map((line) => `  ${line}`)],
  ])
}
