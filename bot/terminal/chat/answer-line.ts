import { ChatError } from '../../chat/chat-error.ts'
import type { DepthShown } from '../../chat/depth.ts'
import { drawFiles } from '../../chat/draw-files.ts'
import { hear } from '../../chat/hear/hear.ts'
import type { Heard } from '../../chat/hear/heard.ts'
import type { CallOutcome, Dispatch, Failure } from '../../chat/run/call-outcome.ts'
import { attempt } from '../../chat/run/execute.ts'
import { explain } from '../../chat/run/explain.ts'
import type { HelpPage } from '../../chat/run/help-page.ts'
import { keepReply, type MoreLead, moreOf } from '../../chat/run/more.ts'
import { trace } from '../../chat/trace.ts'
import type { SaveFile } from '../files/save-file.ts'
import type { TerminalLanguage } from '../show/language-for-terminal.ts'
import type { SavedFile } from '../show/render.ts'
import { readAs, render } from '../show/render.ts'
import { renderHelp } from '../show/render-help.ts'
import type { Screen } from '../show/screen.ts'
import { wrap, wrapSentence } from '../show/wrap.ts'
import { type SayingFor, sayingsFor } from './sayings-for.ts'

/** What became of a line, and the words to print. */
export interface Answer {
  readonly text: string
  readonly failure: Failure | null
}

/** A line's outcome, and what is shown of its reply; left out: what the surface usually shows. */
interface Answering {
  readonly outcome: CallOutcome | HelpPage
  readonly shown?: DepthShown
  readonly lead?: MoreLead | null
  /** How a sentence was understood. */
  readonly heard?: Pick<Heard, 'read' | 'choices'>
  readonly sayings?: SayingFor
}

/** Turns a line's outcome into what is printed. */
export interface Show {
  (answering: Answering, speech: TerminalLanguage, files: readonly SavedFile[]): string
  /** Stands between the answers to what one sentence told of; left out: a blank line. */
  readonly between?: string
}

export const showText =
  (screen: Screen, usual: DepthShown = 'first'): Show =>
  ({ outcome, shown = usual, lead = null, heard, sayings }, speech, files) => {
    if (!outcome.ok) return wrapSentence(explain(outcome, speech), screen.width).join('\n')
    if (!('reply' in outcome)) return renderHelp(outcome, speech, screen)
    const read = heard?.read == null ? [] : [readAs(speech.console.readAs(heard.read), screen)]
    const led = lead === null ? [] : [wrap(speech.more[lead](), screen.width).join('\n')]
    const text = lead === 'nothing' ? [] : [render(outcome.reply, speech, screen, files, shown, sayings)]
    return [...read, ...led, ...text].join('\n\n')
  }

/** What asks for the rest of the last reply. */
const MORE = /^\/?more[.?!]?$/i

/** Where the files of a reply were written; one that could not be made or written keeps nothing else back. */
const saved = async (
  outcome: CallOutcome | HelpPage,
  { words }: TerminalLanguage,
  saveFile: SaveFile,
  log: Dispatch['log'],
): Promise<readonly SavedFile[]> => {
  if (!outcome.ok || !('reply' in outcome)) return []
  const files: SavedFile[] = []
  for (const { name, mime, bytes } of await drawFiles(outcome.reply, words, log)) {
    try {
      files.push({ name, mime, path: bytes === null ? null : await saveFile(name, bytes), code: null })
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException
      if (code === undefined) log(`${name}: ${trace(error)}`)
      files.push({ name, mime, path: null, code: code ?? null })
    }
  }
  return files
}

/** The rest of what was said last. */
const rest = async (dispatch: Dispatch, speech: TerminalLanguage, show: Show): Promise<Answer> => {
  const said = await attempt(
    async () => {
      const last = dispatch.replies?.lastOf(dispatch.userId, dispatch.nowMs) ?? null
      if (last === null) throw new ChatError('not_found', 'nothing_said', {})
      const more = await moreOf(last, dispatch)
      const { outcome } = more
      const sayings = 'reply' in outcome ? await sayingsFor(outcome.reply, dispatch, speech.console) : new Map()
      return { more, text: show({ ...more, sayings }, speech, []) }
    },
    () => null,
    dispatch.log,
  )
  if (!said.ok) return { text: show({ outcome: said }, speech, []), failure: said }
  const { more, text } = said.result
  return { text, failure: more.outcome.ok ? null : more.outcome }
}

/** Answers one line. A fault in the wording is excused like any other. */
export const answer = async (
  line: string,
  dispatch: Dispatch,
  speech: TerminalLanguage,
  show: Show,
  saveFile: SaveFile,
): Promise<Answer> => {
  if (MORE.test(line.trim())) return rest(dispatch, speech, show)
  const { also = [], ...heard } = await hear(line, dispatch, speech.commands)
  const answers: Answer[] = []
  for (const each of [heard, ...also]) answers.push(await answerOf(each, dispatch, speech, show, saveFile))
  const failure = answers.find((each) => each.failure !== null)?.failure ?? null
  return { text: answers.map(({ text }) => text).join(show.between ?? '\n\n'), failure }
}

/** What became of one thing that was said. */
async function answerOf(
  heard: Heard,
  dispatch: Dispatch,
  speech: TerminalLanguage,
  show: Show,
  saveFile: SaveFile,
): Promise<Answer> {
  const { outcome, shown, lead } = heard
  const called = () => (outcome.path === null ? null : { path: outcome.path, options: {} })
  const files = await saved(outcome, speech, saveFile, dispatch.log)
  if ('reply' in outcome) await keepReply(outcome, dispatch)
  const said = await attempt(
    async () => {
      const sayings = 'reply' in outcome ? await sayingsFor(outcome.reply, dispatch, speech.console) : new Map()
      return show(
        { outcome, heard, sayings, ...(shown !== undefined && { shown }), ...(lead && { lead }) },
        speech,
        files,
      )
    },
    called,
    dispatch.log,
  )
  if (said.ok) return { text: said.result, failure: outcome.ok ? null : outcome }
  return { text: show({ outcome: said }, speech, []), failure: said }
}
