import { expect, it } from 'vitest'
import { z } from 'zod'
import { optionTextOf } from '../../../bot/calls/option.ts'
import { execute } from '../../../bot/chat/run/execute.ts'
import { registrationOf } from '../../../bot/discord/connect/registration.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands, testDesk } from '../test-desk.ts'
import { checkPayload } from './fake/check-payload.ts'
import { showProblem } from './fake/problem.ts'

const PATH = '/applications/123456789012345678/commands'

const problemsOf = (body: unknown): readonly string[] => checkPayload('PUT', PATH, body).map(showProblem)

interface Node {
  readonly name: string
  readonly description: string
  readonly options?: readonly Node[]
  readonly choices?: readonly { readonly name: string; readonly value: string }[]
}

/** Discord counts names, descriptions and values of a command with all that is in it. */
const characters = ({ name, description, options = [], choices = [] }: Node): number =>
  name.length +
  description.length +
  choices.reduce((sum, choice) => sum + choice.name.length + choice.value.length, 0) +
  options.reduce((sum, option) => sum + characters(option), 0)

const registered = registrationOf(commands, en)
const nodes = registered as readonly Node[]

/** The registered options of a path. */
const optionsOf = (path: string): readonly Node[] =>
  path
    .split(' ')
    .reduce<readonly Node[]>((level, word) => level.find(({ name }) => name === word)!.options ?? [], nodes)

it('is valid against Discord’s published description and the limits that it does not state', () => {
  expect(problemsOf(registered)).toEqual([])
})

it('would be found out by that check', () => {
  const broken = registered.map((command) => ({ ...command, description: 'x'.repeat(101) }))
  expect(problemsOf(broken).length).toBeGreaterThan(0)
})

it('registers every command of the one list, help, and what takes a sentence', () => {
  const paths = nodes.flatMap(({ name, options = [] }) =>
    options.some((option) => (option as { readonly type?: number }).type === 1)
      ? options.map((option) => `${name} ${option.name}`)
      : [name],
  )
  expect([...paths].sort()).toEqual([...commands.map(({ path }) => path), 'ask', 'help'].sort())
  for (const { path, input } of commands) {
    const names = optionsOf(path).map(({ name }) => name)
    expect([...names].sort(), path).toEqual(Object.keys(input.shape).sort())
  }
})

it('keeps within 25 subcommands, 100 commands, and 8000 characters a command with room for a longer language', () => {
  expect(registered.length).toBeLessThanOrEqual(100)
  for (const command of nodes) {
    expect(command.options?.length ?? 0, command.name).toBeLessThanOrEqual(25)
    expect(characters(command), command.name).toBeLessThanOrEqual(6700)
  }
})

it('has texts of 100 characters at most, so that none has to be shortened', () => {
  const long = Object.entries({ ...en.commands, help: en.registration.help }).flatMap(([path, text]) =>
    [text.summary, ...Object.values(text.options)].filter(({ length }) => length > 100).map((each) => [path, each]),
  )
  expect(long).toEqual([])
})

it('has no localisations where there is one language', () => {
  expect(JSON.stringify(registered)).not.toContain('localizations')
})

it('offers only choices that the command takes', async () => {
  const offered = commands.flatMap(({ path, input }) =>
    Object.entries(input.shape).flatMap(([option, schema]) =>
      (optionTextOf(schema).choices ?? []).map((word) => ({ path, option, schema, typed: String(word) })),
    ),
  )
  expect(new Set(offered.map(({ path }) => path)).size).toBeGreaterThan(5)
  for (const { path, option, schema, typed } of offered) {
    expect(z.safeParse(schema, typed).success, `/${path} ${option}:${typed}`).toBe(true)
  }
  const desk = testDesk()
  const outcome = await desk.run({ path: 'settings', options: { units: 'as typed' } })
  expect(outcome.ok).toBe(true)
  expect(await execute('/reminders place:here', { ...desk.asker, commands, nowMs: 0, log: () => {} })).toMatchObject({
    ok: true,
  })
})
