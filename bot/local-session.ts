import { randomUUID } from 'node:crypto'
import { join } from 'node:path'
import type { Maintenance } from '../store/maintenance.ts'
import type { Store } from '../store/store.ts'
import { newLastReplies } from './chat/last-replies.ts'
import type { Dispatch } from './chat/run/call-outcome.ts'
import type { Config } from './config.ts'
import { edge } from './process-edge.ts'
import { startReminders } from './reminders/start-reminders.ts'
import { noReminders } from './reminders/why-no-reminders.ts'
import { newTalkMemory } from './talk/memory/remembered.ts'
import { consoleSurface } from './terminal/chat/terminal-delivery.ts'
import type { TerminalSession } from './terminal/chat/terminal-session.ts'
import { openFile } from './terminal/files/open-file.ts'
import { forgetFilesIn, saveFileIn } from './terminal/files/save-file.ts'
import { terminalLanguage } from './terminal/show/language-for-terminal.ts'
import { type Screen, widthOf } from './terminal/show/screen.ts'
import { clean } from './text/clean.ts'
import type { Spoken } from './text/language.ts'

/** Whose jars are kept for whoever sits at the terminal. */
export const LOCAL_USER = 'local'

/** As wide as it was set, or as the terminal is. */
export const screenOf = ({ width, noColour }: Config): Screen => ({
  width: widthOf(width, process.stdout),
  colour: process.stdout.isTTY === true && !noColour,
})

interface LocalSession {
  readonly config: Config
  /** IANA name. */
  readonly assumedZone: string
  readonly store: Store & Maintenance
  readonly commands: Dispatch['commands']
  readonly spoken: Spoken
  readonly now: () => number
}

/** The session of whoever sits at the terminal, with the process's own streams. */
export function localSession({ config, assumedZone, store, commands, spoken, now }: LocalSession): TerminalSession {
  const { stdin, stdout } = process
  const { out, err, log, isHeard, ended } = edge
  const screen = screenOf(config)
  const speech = terminalLanguage(spoken.language)
  const files = join(config.data, 'files')
  return {
    commands,
    asker: {
      userId: LOCAL_USER,
      place: { kind: 'console' },
      assumedZone,
      store,
      ...spoken,
      openFile,
      forgetFiles: forgetFilesIn(files),
      newAttempt: randomUUID,
      replies: newLastReplies(),
      talk: newTalkMemory(),
    },
    speech,
    speechIn: terminalLanguage,
    screen,
    saveFile: saveFileIn(files),
    now,
    log,
    out,
    err,
    isHeard,
    ended,
    remind: (say) =>
      startReminders({
        store,
        surface: consoleSurface({ userId: LOCAL_USER, ...spoken, screen, say, isHeard }),
        now,
        assumedZone,
        log,
        complain: (error) => say(clean(noReminders(error, speech.words, speech.console))),
      }),
    input: stdin,
    terminal: stdin.isTTY === true && stdout.isTTY === true ? stdout : null,
  }
}
