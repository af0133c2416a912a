import type { Reply } from '../chat/reply.ts'
import type { Show } from './answer.ts'
import { clean } from './clean.ts'
import { explain } from './explain.ts'
import type { Speech } from './speech.ts'
import { unbind } from './wrap.ts'

const plain = (text: string): string => unbind(clean(text))

const replyFields = (reply: Reply, { words }: Speech) => ({
  data: reply.data,
  notes: reply.notes.map((note) => ({ key: note.key, text: plain(words.say<'notes'>(note, reply.kitchen)) })),
  cautions: reply.cautions.map((caution) => ({
    key: caution.key,
    text: plain(words.say<'cautions'>(caution, reply.kitchen)),
  })),
})

/** One object on one line, for scripts; see the contract of `ask` in the developers' guide. */
export const showJson: Show = (outcome, speech) => {
  if (outcome.ok) {
    const fields =
      'reply' in outcome
        ? replyFields(outcome.reply, speech)
        : { data: { commands: outcome.entries }, notes: [], cautions: [] }
    return JSON.stringify({ command: outcome.path, ...fields })
  }
  const { code, option, nearest } = outcome.error
  const error = { code, message: unbind(explain(outcome.path, outcome.error, speech)), option, nearest }
  return JSON.stringify({ command: outcome.path, error })
}
