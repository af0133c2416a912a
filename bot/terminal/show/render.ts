import { styleText } from 'node:util'
import { lineOf } from '../../calls/write-line.ts'
import { byHeading, type DepthShown, hasMore, partsAt } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import { clean } from '../../text/clean.ts'
import { columns } from './columns.ts'
import type { TerminalLanguage } from './language-for-terminal.ts'
import type { Screen } from './screen.ts'
import { textWidth } from './text-width.ts'
import { hang, wrap, wrapSentence } from './wrap.ts'

/** A file of a reply and where it is; no path where it could not be made or written, and then why, as the system calls it. */
export interface SavedFile {
  readonly name: string
  readonly mime: string
  readonly path: string | null
  readonly code: string | null
}

const MARGIN = '  '

type Style = Parameters<typeof styleText>[0]

const styled = (style: Style, lines: readonly string[], { colour }: Screen): readonly string[] =>
  colour ? lines.map((line) => styleText(style, line, { validateStream: false })) : lines

const toType = ({ actions }: Reply) => actions.filter(({ isButtonOnly }) => isButtonOnly !== true)

const AFTER = '   '

/** Lines to type, as many beside each other as there is room for. None is ever broken, so that it can be copied. */
function actionLines(
  reply: Reply,
  { words, console }: TerminalLanguage,
  { width }: Screen,
  sayings: ReadonlyMap<string, string>,
): readonly string[] {
  const lines: string[] = []
  let room = 0
  for (const { label, call } of toType(reply)) {
    const line = clean(sayings.get(lineOf(call)) ?? words.line(call))
    const named = clean(words.say<'actions'>(label, reply.kitchen))
    const whole = console.action(named, line)
    const taken = textWidth(whole)
    if (AFTER.length + taken <= room) {
      lines.push(`${lines.pop()}${AFTER}${whole}`)
      room -= AFTER.length + taken
    } else if (MARGIN.length + taken <= width) {
      lines.push(MARGIN + whole)
      room = width - MARGIN.length - taken
    } else {
      lines.push(...hang(MARGIN, console.action(named, '').trimEnd(), width), MARGIN + MARGIN + line)
      room = 0
    }
  }
  return lines
}

/** How a sentence was understood, as the line that could have been typed: never broken, so that it can be copied. */
export const readAs = (text: string, screen: Screen): string => styled('dim', [clean(text)], screen).join('\n')

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

const hint = ({ more }: TerminalLanguage, reply: Reply, shown: DepthShown): readonly string[] =>
  shown === 'first' && hasMore(reply) ? [more.hint()] : []

/** In one line where there is room. */
const beside = (lines: readonly string[], last: readonly string[], { width }: Screen): readonly string[] => {
  const [end = ''] = last
  const before = lines.at(-1)
  const joined = `${before}${AFTER}${end}`
  if (before === undefined || end === '' || textWidth(joined) > width) return [...lines, ...last]
  return [...lines.slice(0, -1), joined]
}

/**
 * A reply for a terminal: the answer, its files, the table, notes, cautions, what can be typed next; one question deeper
 * how sure it is, too.
 */
export const render = (
  reply: Reply,
  speech: TerminalLanguage,
  screen: Screen,
  files: readonly SavedFile[] = [],
  shown: DepthShown = 'first',
  /** What can be said in place of a line. */
  sayings: ReadonlyMap<string, string> = new Map(),
): string => {
  const { words } = speech
  const { kitchen } = reply
  const { headline, under = [], table, sure, notes, cautions, actions } = partsAt(reply, shown)
  const said = (each: Reply['headline']) => wrap(clean(words.say<'headlines'>(each, kitchen)), screen.width)
  const rows = table.map(
    ({ label, cell, call }) =>
      [
        clean(words.say<'rows'>(label, kitchen)),
        clean(words.say<'cells'>(cell, kitchen)),
        call === undefined ? '' : clean(words.line(call)),
      ] as const,
  )
  const noteLines = (each: Reply['notes'][number]): readonly string[] => {
    const text = clean(words.say<'notes'>(each, kitchen))
    return shown === 'first' ? wrapSentence(text, screen.width) : hang('• ', text, screen.width)
  }
  const noteBlocks = byHeading(notes).map(({ heading, items }) => [
    ...(heading === undefined ? [] : styled('bold', [speech.more.headings[heading]()], screen)),
    ...items.flatMap(noteLines),
  ])
  const cautionLines = cautions.flatMap((each) => hang('! ', clean(words.say<'cautions'>(each, kitchen)), screen.width))
  return joinBlocks([
    // It was said right before.
    shown === 'more' ? [] : [...styled('bold', said(headline), screen), ...under.flatMap(said)],
    fileLines(files, speech, screen),
    columns(rows, screen.width),
    sure.flatMap((each) => wrap(clean(words.say<'sure'>(each, kitchen)), screen.width)),
    ...noteBlocks,
    styled(['bold', 'yellow'], cautionLines, screen),
    beside(actionLines({ ...reply, actions }, speech, screen, sayings), hint(speech, reply, shown), screen),
  ])
}
