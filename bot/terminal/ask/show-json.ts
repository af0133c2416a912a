import { depthOf } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import { explain } from '../../chat/run/explain.ts'
import { clean } from '../../text/clean.ts'
import type { Show } from '../chat/answer-line.ts'
import type { TerminalLanguage } from '../show/language-for-terminal.ts'
import { unbind } from '../show/wrap.ts'

const plain = (text: string): string => unbind(clean(text))

const replyFields = (reply: Reply, { dataWords: words }: TerminalLanguage) => ({
  data: reply.data,
  rows: reply.table.map((row) => ({
    key: row.label.key,
    label: plain(words.say<'rows'>(row.label, reply.kitchen)),
    text: plain(words.say<'cells'>(row.cell, reply.kitchen)),
    depth: depthOf(row),
  })),
  sure: reply.sure.map((each) => ({
    key: each.key,
    text: plain(words.say<'sure'>(each, reply.kitchen)),
    depth: 'more',
  })),
  notes: reply.notes.map((note) => ({
    key: note.key,
    text: plain(words.say<'notes'>(note, reply.kitchen)),
    depth: depthOf(note),
  })),
  cautions: reply.cautions.map((caution) => ({
    key: caution.key,
    text: plain(words.say<'cautions'>(caution, reply.kitchen)),
    depth: depthOf(caution),
  })),
})

const answerJson: Show = ({ outcome, heard }, speech, files) => {
  const read = heard?.read == null ? {} : { read: heard.read }
  if (outcome.ok) {
    const fields =
      'reply' in outcome
        ? replyFields(outcome.reply, speech)
        : { data: { commands: outcome.entries }, rows: [], sure: [], notes: [], cautions: [] }
    const written = files.length === 0 ? {} : { files: files.map(({ name, mime, path }) => ({ name, mime, path })) }
    return JSON.stringify({ ...read, command: outcome.path, ...fields, ...written })
  }
  const { code, option, nearest } = outcome.error
  const choices = code === 'question' || code === 'not_understood' ? { choices: heard?.choices ?? [] } : {}
  const error = {
    code,
    message: unbind(explain(outcome, { ...speech, words: speech.dataWords })),
    option,
    nearest,
    ...choices,
  }
  return JSON.stringify({ ...read, command: outcome.path, error })
}

/**
 * One object on one line, for scripts; see the contract of `ask` in the developers' guide. A sentence that tells of two deeds is answered
 * by two lines.
 */
export const showJson: Show = Object.assign(answerJson, { between: '\n' })
