import { CALLBACK, type Call, type FakeInteraction } from './interactions.ts'
import { isRecord, type Json, type Upload } from './json.ts'
import { textOf } from './shown-text.ts'
import type { FakeMessage } from './world.ts'

/** All that the bot has answered to one interaction. */
export interface Answer {
  readonly interaction: FakeInteraction
  /** Every request about it in the order they came, refused ones too. */
  readonly calls: readonly Call[]
  /** The callback that was accepted. */
  readonly callback: FakeInteraction['callback']
  /** What `@original` is now: the answer, or the message pressed when that was changed. */
  readonly message: FakeMessage | undefined
  readonly followUps: readonly FakeMessage[]
  /** The form shown. */
  readonly modal: Json | undefined
  /** What autocomplete offers. */
  readonly choices: readonly { readonly name: string; readonly value: string | number }[]
  /** Whether only the person who asked sees the answer. */
  readonly isPrivate: boolean
  readonly wasDeferred: boolean
  /** All text a person reads in the answer, line by line. */
  readonly text: string
  readonly files: readonly Upload[]
  /** From sending the interaction to the arrival of the first request about it. */
  readonly firstAnswerMs: number
}

/** All of an answer: what does not fit into one message goes on in the next. */
export const pagesOf = ({ text, followUps }: Pick<Answer, 'text' | 'followUps'>): string =>
  [text, ...followUps.map(({ json }) => textOf(json))].join('\n')

export interface Wait {
  /** When the answer is whole; when left out: an answer, a form, choices, or what was promised by deferring. */
  readonly until?: (answer: Answer) => boolean
  /** How long nothing more must come before it counts as whole. */
  readonly quietMs?: number
  /** How long to wait in real time before giving up. */
  readonly patienceMs?: number
}

const QUIET_MS = 8
const PATIENCE_MS = 5000

export const answerOf = (interaction: FakeInteraction): Answer => {
  const { callback, original, followUps, calls, firstAnswerAt, dispatchedAt } = interaction
  const data = callback?.data ?? {}
  return {
    interaction,
    calls,
    callback,
    message: original,
    followUps,
    modal: callback?.type === CALLBACK.modal ? data : undefined,
    choices: callback?.type === CALLBACK.choices && Array.isArray(data.choices) ? data.choices : [],
    isPrivate: original?.onlyFor !== undefined,
    wasDeferred: callback?.type === CALLBACK.deferMessage || callback?.type === CALLBACK.deferUpdate,
    text: original ? textOf(original.json) : '',
    files: original?.files ?? [],
    firstAnswerMs: firstAnswerAt === undefined ? Number.NaN : firstAnswerAt - dispatchedAt,
  }
}

/** A promise to answer or to change is kept by a later request, which has to have succeeded. */
const isWhole = ({ callback, calls }: Answer): boolean => {
  if (!callback) return false
  if (callback.type !== CALLBACK.deferMessage && callback.type !== CALLBACK.deferUpdate) return true
  return calls.some(({ route, status }) => !['callback', 'answer'].includes(route) && status >= 200 && status < 300)
}

const show = ({ route, status, body }: Call): string =>
  `${route} ${isRecord(body) && body.type !== undefined ? `(type ${body.type}) ` : ''}${status}`

/** Resolves when the bot has answered and nothing more comes; rejects with what has come when that takes too long. */
export const settled = (interaction: FakeInteraction, what: string, wait: Wait): Promise<void> =>
  new Promise((resolve, reject) => {
    const { until = isWhole, quietMs = QUIET_MS, patienceMs = PATIENCE_MS } = wait
    let quiet: NodeJS.Timeout | undefined
    const end = (act: () => void): void => {
      clearTimeout(quiet)
      clearTimeout(deadline)
      interaction.watchers.delete(look)
      act()
    }
    const isDone = (): boolean => interaction.open === 0 && until(answerOf(interaction))
    // After a pause of the whole process a timer comes before the sockets: they get their turn first.
    const confirm = (): void => {
      const seen = interaction.calls.length
      setImmediate(() => setImmediate(() => (interaction.calls.length === seen && isDone() ? end(resolve) : look())))
    }
    const look = (): void => {
      clearTimeout(quiet)
      if (isDone()) quiet = setTimeout(confirm, quietMs)
    }
    const deadline = setTimeout(() => {
      const came = interaction.calls.map(show).join(', ') || 'nothing'
      end(() => reject(new Error(`${what}: not answered within ${patienceMs} ms; came: ${came}`)))
    }, patienceMs)
    interaction.watchers.add(look)
    look()
  })
