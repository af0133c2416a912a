import { expect, it } from 'vitest'
import { inMore } from '../../../bot/chat/depth.ts'
import type { Reply } from '../../../bot/chat/reply.ts'
import { consoleSurface } from '../../../bot/terminal/chat/terminal-delivery.ts'
import { terminalLanguage } from '../../../bot/terminal/show/language-for-terminal.ts'
import { en } from '../../../bot/text/en/index.ts'
import { NOBODY } from '../../../store/person.ts'

it('says a nudge whole: of what nobody asked for there is no more to ask', async () => {
  const said: string[] = []
  const screen = { width: 80, colour: false }
  const say = (text: string) => said.push(text)
  const surface = consoleSurface({ userId: 'local', language: en, screen, say, isHeard: () => true })
  const nudge = { nudgeId: 'a1', userId: 'local', place: { kind: 'console' }, madeMs: 0 } as const
  const reply: Reply = {
    headline: { group: 'headlines', key: 'shopping_no_jars', values: undefined },
    table: [],
    sure: [],
    notes: inMore([{ group: 'notes', key: 'nudge_moved', values: undefined } as const]),
    cautions: [],
    actions: [],
    data: {},
    kitchen: 'metric',
  }
  await surface.send({ ...nudge, reply, settings: NOBODY.settings, mayHaveBeenSeen: false, attempt: 1 })
  const language = terminalLanguage(en)
  const words = (text: string): string => text.replace(/[\s•]+/g, ' ')
  expect(words(said[0]!)).toContain(words(language.words.say<'notes'>(reply.notes[0]!, 'metric')))
  expect(said[0]).not.toContain(language.more.hint())
})
