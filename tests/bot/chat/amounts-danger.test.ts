import { expect, it } from 'vitest'
import { isAmount, optionTextOf } from '../../../bot/calls/option.ts'
import { expectNoDanger } from '../../../bot/chat/run/expect-no-danger.ts'
import { commands } from '../test-desk.ts'

const amounts = commands.flatMap((command) =>
  Object.entries(command.input.shape).flatMap(([option, schema]) =>
    isAmount(optionTextOf(schema).suggested) ? [[command.path, option, command] as const] : [],
  ),
)

it('knows options that complete an amount', () => {
  expect(new Set(amounts.map(([, option]) => option))).toEqual(
    new Set(['sweetness', 'to-sweetness', 'when', 'until', 'entry', 'after', 'bottles', 'opened', 'given']),
  )
})

it.each(amounts)('/%s %s: is looked through though it is completed', (path, option, command) => {
  expect(() => expectNoDanger(command, { path, options: { [option]: 'methanol' } })).toThrow()
  expect(() => expectNoDanger(command, { path, options: { [option]: '4' } })).not.toThrow()
})
