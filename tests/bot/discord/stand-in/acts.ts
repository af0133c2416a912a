import { nearest } from '../../../../bot/chat/grammar/nearest.ts'
import { type Desk, nowMs, restart } from './desk.ts'
import { readMoment, readSpan, splitWord } from './lines.ts'
import { choose, command, fill, press, type } from './message-lines.ts'
import { allow, become, deny, go, remove } from './place-lines.ts'
import { Refusal } from './refusal.ts'
import type { Showing } from './show.ts'
import { showMessage } from './show.ts'
import { reply, write } from './write-lines.ts'

interface Act {
  /** As it is typed, and what it does. */
  readonly help: readonly (readonly [line: string, does: string])[]
  readonly run: (rest: string, desk: Desk, showing: Showing) => string | Promise<string>
}

const LOG_LINES = 40

const ACTS: Readonly<Record<string, Act>> = {
  write: {
    help: [['write @larderbell 10 lemons, 1 l 95%', 'a message here; in private the text alone will do']],
    run: write,
  },
  reply: { help: [['reply 3 drier', 'a message that answers message 3']], run: reply },
  type: { help: [['type /jar show jar:le', 'what is offered while the last option is typed']], run: type },
  press: {
    help: [['press Shaken, press 3 Shaken', 'a button of the newest message here that has it, or of message 3']],
    run: press,
  },
  choose: { help: [['choose Rome, choose 3 Rome', 'from the list under a message']], run: choose },
  fill: { help: [['fill rating=4; note="sharp; dry"', 'sends the form that is open']], run: fill },
  as: { help: [['as sorrel', 'be somebody else, who joins when new']], run: become },
  in: {
    help: [['in cellar, in private', 'be in another channel, made when new, or in your direct messages']],
    run: go,
  },
  later: {
    help: [['later 3h, later 1d 12h', 'the bot is stopped, and started so much later']],
    run: (rest, desk) => restart(desk, readSpan(rest)),
  },
  until: {
    help: [['until 09:00, until tomorrow 09:00', 'the same, to a time by LARDERBELL_ZONE']],
    run: (rest, desk) => restart(desk, readMoment(rest, desk.zone, nowMs(desk)) - nowMs(desk)),
  },
  restart: { help: [['restart', 'the bot is stopped and started']], run: (_, desk) => restart(desk) },
  messages: {
    help: [['messages', 'all that you see here']],
    run: (_, { scene }, showing) =>
      scene
        .seenHere()
        .map((message) => showMessage(message, showing))
        .join('\n') || 'There are none.',
  },
  deny: { help: [['deny SendMessages, EmbedLinks', 'what the bot may not do in this channel']], run: deny },
  allow: { help: [['allow', 'it may do all again']], run: allow },
  delete: { help: [['delete channel', 'the channel you are in']], run: remove },
  log: {
    help: [['log', 'the end of what the bot has logged']],
    run: (_, { bot }) => bot.log().trimEnd().split('\n').slice(-LOG_LINES).join('\n') || 'Nothing is logged.',
  },
  help: { help: [['help', 'these lines']], run: () => helpText() },
}

const HELP: readonly (readonly [string, string])[] = [
  ['/jar start name:lemon of:10 lemons', 'a command, every option by its name; "…" keeps a colon in a value'],
  ['/notebook import:@/tmp/jars.json', 'a file as an option'],
]

const helpText = (): string => {
  const rows = [...HELP, ...Object.values(ACTS).flatMap(({ help }) => help), ['quit', 'ends it']]
  const width = Math.max(...rows.map(([line = '']) => line.length))
  return rows.map(([line = '', does = '']) => `${line.padEnd(width)}  ${does}`).join('\n')
}

/** Does what a line says; what it answers besides the messages that are new. */
export const act = async (line: string, desk: Desk, showing: Showing): Promise<string> => {
  const [word, rest] = splitWord(line)
  if (word === '') return ''
  if (word.startsWith('/')) return command(line.trim(), desk)
  if (Object.hasOwn(ACTS, word)) return ACTS[word]!.run(rest, desk, showing)
  if (desk.scene.room() === null) return write(line.trim(), desk)
  const meant = nearest(word, [...Object.keys(ACTS), 'quit'])
  const asked = meant === null ? '' : ` Did you mean ${meant}?`
  throw new Refusal(`I do not know “${word}”.${asked} help lists all lines, write sends words.`)
}
