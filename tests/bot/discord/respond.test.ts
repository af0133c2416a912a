import { expect, it } from 'vitest'
import type { InteractionResponses } from '../../../bot/discord/answer/interaction-responses.ts'
import { respond } from '../../../bot/discord/answer/respond.ts'
import type { CallRun } from '../../../bot/discord/answer/run-call.ts'
import type { MessagePayload } from '../../../bot/discord/show/message-payload.ts'

const EXCUSE: MessagePayload = { flags: 0, components: [], allowed_mentions: { parse: [] } }

/** What was said on the wire, for work that fails `when` it was promised or before. */
const saidOf = async (when: 'before' | 'after'): Promise<readonly string[]> => {
  const said: string[] = []
  let fail = (): void => undefined
  const note = (what: string) => async () => {
    said.push(what)
    if (what === 'promise') fail()
    return 'answered' as const
  }
  const wire = {
    message: note('message'),
    promise: note('promise'),
    fulfil: note('fulfil'),
  } as unknown as InteractionResponses
  const work = new Promise<CallRun>((_, reject) => {
    fail = () => reject(new TypeError('nobody caught it'))
    if (when === 'before') fail()
  })
  await respond(wire, work, {
    excuse: () => EXCUSE,
    posted: () => EXCUSE,
    isAlone: false,
    after: (_, act) => {
      if (when === 'after') act()
      return () => undefined
    },
    slow: new Promise(() => undefined),
    log: () => undefined,
  })
  return said
}

it('excuses itself where the work fails in a way that nobody foresaw, also after it was promised', async () => {
  expect(await saidOf('before')).toEqual(['message'])
  expect(await saidOf('after')).toEqual(['promise', 'fulfil'])
})
