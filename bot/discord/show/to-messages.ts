import { lineOf } from '../../calls/write-line.ts'
import { type DepthShown, partsAt } from '../../chat/depth.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { CallOutcome } from '../../chat/run/call-outcome.ts'
import { explain } from '../../chat/run/explain.ts'
import type { HelpPage } from '../../chat/run/help-page.ts'
import type { ButtonIds } from '../buttons/button-ids.ts'
import { encodeCustomId } from '../buttons/custom-id.ts'
import { shortened } from './cut-text.ts'
import { isolatedWithin } from './isolate-rtl.ts'
import type { DiscordLanguage } from './language-for-discord.ts'
import {
  type Button,
  LABEL_CHARACTERS,
  type MessagePayload,
  MOST_BUTTONS,
  messageOf,
  TEXT_CHARACTERS,
} from './message-payload.ts'
import { type Block, pagesOf } from './pages.ts'
import { plainText } from './plain-text.ts'
import { type CommandIds, helpBlocks, replyBlocks, sentenceBlocks } from './reply-blocks.ts'

/** For whom and where something is said. */
export interface Rendering {
  /** Discord's number of the person that it is made for. */
  readonly owner: string
  /** Shown to them alone, with a button that shows it to everybody. */
  readonly isPrivate: boolean
  /** Begins with their name, which pings them. */
  readonly pings: boolean
  /** Of the reply's actions; one that is missing is shown as a line to type. */
  readonly ids: ButtonIds
  /** At most so many messages, 1 or more: an answer can have four after the first where the app is a person's own. */
  readonly mostMessages: number
  /** Markdown that stands under the answer as it is; left out: nothing does. */
  readonly under?: readonly string[]
  /** What is shown of a reply; left out: its first screen. */
  readonly shown?: DepthShown
  /** What opens the rest of it; null, or left out, where nothing does. */
  readonly more?: string | null
  /** A sentence before the answer. */
  readonly lead?: string
  /** Of a failure: what opens the form again that was filled in; null, or left out, where there is none. */
  readonly again?: string | null
  /** What leads on from it in one press; null, or left out, where nothing does. */
  readonly wayOut?: Button | null
  /** Left out: no command can be clicked. */
  readonly commandIds?: CommandIds
}

/** The line of the button that shows an answer to everybody. */
export const SHOW_LINE = '!show'

/** Kept free in every message for a name and the sentence that something was left out. */
const RESERVED = 300

interface Offered {
  readonly buttons: readonly Button[]
  readonly toType: readonly Action[]
}

/** Actions that fit on buttons, and those that do not. */
function offered({ actions, kitchen }: Reply, { ids }: Rendering, { plainWords }: DiscordLanguage): Offered {
  const buttons = new Map<string, Button>()
  const toType: Action[] = []
  for (const action of actions) {
    const isButtonOnly = action.isButtonOnly === true
    const customId = ids.get(lineOf(action.call))
    // Two are left for "More" and "Show everybody".
    if (customId === undefined || (buttons.size >= MOST_BUTTONS - 2 && !buttons.has(customId))) {
      if (!isButtonOnly) toType.push(action)
    } else if (!buttons.has(customId)) {
      const said = plainText(plainWords.say<'actions'>(action.label, kitchen)).trim()
      const whole = shortened(said === '' ? plainText(plainWords.line(action.call)) : said, LABEL_CHARACTERS)
      const label = isolatedWithin(whole, LABEL_CHARACTERS)
      buttons.set(customId, { label, customId, isMain: buttons.size === 0 && !isButtonOnly })
    }
  }
  return { buttons: [...buttons.values()], toType }
}

const showButton = ({ owner, isPrivate }: Rendering, { discord }: DiscordLanguage): readonly Button[] => {
  const customId = isPrivate ? encodeCustomId({ owner, line: SHOW_LINE, nudgeId: null }) : null
  return customId === null ? [] : [{ label: discord.showEverybody(), customId, isMain: false }]
}

interface Said {
  readonly path: string | null
  readonly blocks: readonly Block[]
  readonly buttons: readonly Button[]
  /** On every message of the answer: each shows itself. */
  readonly show: readonly Button[]
}

function inMessages(
  { path, blocks, buttons, show }: Said,
  rendering: Rendering,
  speech: DiscordLanguage,
): readonly MessagePayload[] {
  const { owner, isPrivate, pings, mostMessages, under = [] } = rendering
  const room = TEXT_CHARACTERS - RESERVED - under.join('').length
  const { pages, leftOut } = pagesOf(blocks, room, mostMessages)
  return pages.map((page, index) => {
    const [isFirst, isLast] = [index === 0, index === pages.length - 1]
    const name = isFirst && pings ? [`<@${owner}>`] : []
    const more = isLast && leftOut > 0 ? [speech.discord.shortened({ count: leftOut, path })] : []
    const pinged = name.length > 0 ? owner : null
    return messageOf([...name, ...page, ...more, ...(isLast ? under : [])], [...(isLast ? buttons : []), ...show], {
      isPrivate,
      pinged,
    })
  })
}

const failureButtons = (
  { again = null, wayOut = null }: Rendering,
  { discord }: DiscordLanguage,
): readonly Button[] => [
  ...(again === null ? [] : [{ label: discord.tryAgain(), customId: again, isMain: true }]),
  ...(wayOut === null ? [] : [wayOut]),
]

/** A sentence alone, for whoever pressed or typed. */
export const sentenceMessage = (
  sentence: string,
  rendering: Rendering,
  speech: DiscordLanguage,
  buttons: readonly Button[] = failureButtons(rendering, speech),
): MessagePayload => {
  const said = { path: null, blocks: sentenceBlocks(sentence), buttons, show: [] }
  return inMessages(said, { ...rendering, mostMessages: 1 }, speech)[0]!
}

/** A reply in as many messages as it needs, the answer in the first and the buttons on the last. */
export function replyMessages(
  path: string | null,
  reply: Reply,
  rendering: Rendering,
  speech: DiscordLanguage,
): readonly MessagePayload[] {
  const { shown = 'first', more = null, lead } = rendering
  const parts = partsAt(reply, shown)
  const { buttons: offers, toType } = offered(parts, rendering, speech)
  const led = lead === undefined ? [] : sentenceBlocks(lead)
  const blocks = [...led, ...replyBlocks(parts, toType, speech)]
  const deeper = more === null ? [] : [{ label: speech.more.button(), customId: more, isMain: false }]
  const buttons = [...offers, ...deeper]
  const show = reply.visibility === 'confidential' ? [] : showButton(rendering, speech)
  return inMessages({ path, blocks, buttons, show }, rendering, speech)
}

/** Whatever a line or a press came to, as messages that no limit of Discord's rejects. */
export function toMessages(
  outcome: CallOutcome | HelpPage,
  rendering: Rendering,
  speech: DiscordLanguage,
): readonly MessagePayload[] {
  if (!outcome.ok) return [sentenceMessage(explain(outcome, speech), rendering, speech)]
  if ('reply' in outcome) return replyMessages(outcome.path, outcome.reply, rendering, speech)
  const said = {
    path: outcome.path,
    blocks: helpBlocks(outcome, speech, rendering.commandIds),
    buttons: [],
    show: showButton(rendering, speech),
  }
  return inMessages(said, rendering, speech)
}
