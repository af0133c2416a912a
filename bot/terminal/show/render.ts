import { styleText } from 'node:util'
import type { Reply } from '../../chat/reply.ts'
import { clean } from '../../text/clean.ts'
import { columns } from './columns.ts'
import type { TerminalLanguage } from './language-for-terminal.ts'
import type { Screen } from './screen.ts'
import { textWidth } from './text-width.ts'
import { hang, wrap } from './wrap.ts'

/** A file of a reply and where it is; no path where it could not be made or written, and then why, as the system calls it. */
export interface SavedFile {
  readonly name: string
  readonly mime: string
  readonly path: string | null
  readonly code: string | null
}

type Style = Parameters<typeof styleText>[0]

const styled = (style: Style, lines: readonly string[], { colour }: Screen): readonly string[] =>
  colour ? lines.map((line) => styleText(style, line, { validateStream: false })) : lines

const toType = ({ actions }: Reply) => actions.filter(({ isButtonOnly }) => isButtonOnly !== true)

const actionLines = (reply: Reply, { words, console }: TerminalLanguage, { width }: Screen): readonly string[] =>
  toType(reply).flatMap(({ label, call }) => {
    const line = words.line(call)
    const named = clean(words.say<'actions'>(label, reply.kitchen))
    const whole = `  ${console.action(named, clean(line))}`
    // A line to type is never broken, so that it can be copied.
    return textWidth(whole) <= width
      ? [whole]
      : [...hang('  ', console.action(named, '').trimEnd(), width), `    ${clean(line)}`]
  })

/** A path is never broken, so that it can be copied. */
const fileLines = (files: readonly SavedFile[], { console }: TerminalLanguage, { width }: Screen): readonly string[] =>
  files.flatMap(({ name, path, code }) =>
    path === null ? wrap(console.fileFailed({ name, code }), width) : [clean(console.fileSaved({ path }))],
  )

/** Blocks of lines with an empty line between those that have any. */
export const joinBlocks = (blocks: readonly (readonly string[])[]): string =>
  blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n')

/** A reply for a terminal: the answer, its files, the table, how sure it is, notes, cautions, what can be typed next. */
export const render = (
  reply: Reply,
  speech: TerminalLanguage,
  screen: Screen,
  files: readonly SavedFile[] = [],
): string => {
  const { words, console } = speech
  const { kitchen } = reply
  const rows = reply.table.map(
    ({ label, cell }) => [clean(words.say<'rows'>(label, kitchen)), clean(words.say<'cells'>(cell, kitchen))] as const,
  )
  const sure = reply.sure.flatMap((each) => wrap(clean(words.say<'sure'>(each, kitchen)), screen.width))
  const notes = reply.notes.flatMap((each) => hang('• ', clean(words.say<'notes'>(each, kitchen)), screen.width))
  const cautions = reply.cautions.flatMap((each) =>
    hang('! ', console.caution(clean(words.say<'cautions'>(each, kitchen))), screen.width),
  )
  const actions = actionLines(reply, speech, screen)
  return joinBlocks([
    styled('bold', wrap(clean(words.say<'headlines'>(reply.headline, kitchen)), screen.width), screen),
    fileLines(files, speech, screen),
    columns(rows, screen.width),
    sure,
    notes,
    styled(['bold', 'yellow'], cautions, screen),
    actions.length === 0 ? [] : [console.next(), ...actions],
  ])
}
