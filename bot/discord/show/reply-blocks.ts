import { byHeading, depthOf } from '../../chat/depth.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import { ALL, type HelpPage, toldFirst } from '../../chat/run/help-page.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import { shortened } from './cut-text.ts'
import { escapeText } from './escape-text.ts'
import type { DiscordLanguage } from './language-for-discord.ts'
import type { Block, PageLine } from './pages.ts'
import { plainText } from './plain-text.ts'

/** Notes that say a zone was taken for granted. */
const ASSUMED: readonly string[] = ['jar_zone_assumed', 'reminders_zone_assumed', 'settings_zone_assumed']

/** Whether a note only concerns whoever asked; it stands in the last text of a message with the choice. */
export const isOfZone = ({ key }: Reply['notes'][number]): boolean => ASSUMED.includes(key)

const LONGEST_LABEL = 200

/** Small print, by Discord's markdown. */
export const SMALL = '-# '

const line = (text: string, open = '', close = ''): PageLine => ({
  lead: '',
  open,
  text: plainText(text).trim(),
  close,
})

const bold = (text: string): PageLine => line(text, '**', '**')

/** The label in bold, then what belongs to it: on a phone they wrap as one paragraph. */
const row = (label: string, cell: string): PageLine => {
  const said = escapeText(shortened(plainText(label).trim(), LONGEST_LABEL))
  return { ...line(cell), lead: said === '' ? '' : `**${said}** ` }
}

/** Spaces that align columns in a terminal. */
const unaligned = (text: string): string => text.replace(/\u00a0{2,}/g, ' ')

const hasText = ({ lead, text }: PageLine): boolean => lead !== '' || text !== ''

const blocksOf = (blocks: readonly Block[]): readonly Block[] =>
  blocks.map((block) => block.filter(hasText)).filter((block) => block.length > 0)

/** What can be typed next, where it is on no button. */
const typedBlock = (actions: readonly Action[], kitchen: Kitchen, { words, discord }: DiscordLanguage): Block =>
  actions.length === 0
    ? []
    : [
        line(discord.next()),
        ...actions.map((action) =>
          line(discord.action(words.say<'actions'>(action.label, kitchen), words.line(action.call))),
        ),
      ]

/** What is to be shown of a reply in blocks: the answer, the worst caution first, the table, how sure it is, notes, what to type, last the notes of the zone. */
export function replyBlocks(reply: Reply, toType: readonly Action[], speech: DiscordLanguage): readonly Block[] {
  const { words, discord } = speech
  const { kitchen } = reply
  const plain = (note: Reply['notes'][number]): PageLine => line(words.say<'notes'>(note, kitchen))
  const small = (note: Reply['notes'][number]): PageLine => line(words.say<'notes'>(note, kitchen), SMALL)
  return blocksOf([
    [
      bold(words.say<'headlines'>(reply.headline, kitchen)),
      ...(reply.under ?? []).map((each) => line(words.say<'headlines'>(each, kitchen))),
    ],
    reply.cautions.map((each) => bold(discord.cautioned(words.say<'cautions'>(each, kitchen)))),
    reply.table.map(({ label, cell }) =>
      row(discord.rowLabel(words.say<'rows'>(label, kitchen)), unaligned(words.say<'cells'>(cell, kitchen))),
    ),
    reply.sure.map((each) => line(words.say<'sure'>(each, kitchen))),
    ...byHeading(reply.notes.filter((each) => !isOfZone(each))).map(({ heading, items }) => [
      ...(heading === undefined ? [] : [bold(speech.more.headings[heading]())]),
      ...items.map((each) => (depthOf(each) === 'first' ? plain(each) : small(each))),
    ]),
    typedBlock(toType, kitchen, speech),
    reply.notes.filter(isOfZone).map(small),
  ])
}

/** Discord's number of a command that is registered, by its first word. */
export type CommandIds = ReadonlyMap<string, string>

const NONE: CommandIds = new Map()

/** A command in a row of its own: one that can be clicked where its number is known (`</jar list:123>`). */
const commandRow = (path: string, text: string, ids: CommandIds): PageLine => {
  const id = ids.get(path.split(' ')[0]!)
  return id === undefined ? row(`/${path}`, text) : { ...line(text), lead: `</${path}:${id}> ` }
}

/** Help in blocks: where to begin, commands with a line each, or one with its options and examples. */
export function helpBlocks(
  page: HelpPage,
  { discord, help, line: named }: DiscordLanguage,
  ids: CommandIds = NONE,
): readonly Block[] {
  const entries = toldFirst(page)
  const [entry] = entries
  const rest = page.first === undefined ? [] : [line(named(help.rest(page.first.rest)), SMALL)]
  if (page.lines !== undefined) {
    const also = page.first === undefined ? [] : [line(named(help.also(page.first.rest)), SMALL)]
    return blocksOf([page.lines.map((each) => row(named(each.line), each.what)), also])
  }
  if (page.topics !== undefined) {
    const topics = [
      ...page.topics.map((topic) => [topic, help.topics[topic]] as const),
      [ALL, help.everything()] as const,
    ]
    return blocksOf([
      [bold(help.startHere()), ...(page.firstLines ?? help.first()).map((each) => row(named(each.line), each.what))],
      [bold(help.byTopic()), ...topics.map(([topic, text]) => row(named(`/help ${topic}`), text))],
      [line(named(help.oneCommand()), SMALL)],
    ])
  }
  if (page.topic === null || entry === undefined) {
    return blocksOf([
      [bold(discord.commands())],
      entries.map(({ command, summary }) => commandRow(command, summary, ids)),
      rest.length > 0 ? rest : [line(discord.more(), SMALL)],
    ])
  }
  return blocksOf([
    [bold(`/${entry.command}: ${entry.summary}`)],
    entry.options.map(({ name, text, required }) => row(`${name}:`, discord.option(text, required))),
    entry.examples.length === 0
      ? []
      : [line(discord.examples()), ...entry.examples.map((example) => line(named(example)))],
    [...rest, ...(page.also === undefined ? [] : [line(named(help.also(page.also)), SMALL)])],
  ])
}

/** One sentence. */
export const sentenceBlocks = (sentence: string): readonly Block[] => blocksOf([[line(sentence)]])
