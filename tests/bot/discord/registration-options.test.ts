import { expect, it } from 'vitest'
import { z } from 'zod'
import { jarOptions } from '../../../bot/calls/jar-options.ts'
import { option } from '../../../bot/calls/option.ts'
import { planOptions } from '../../../bot/calls/plan-options.ts'
import { quantityOptions } from '../../../bot/calls/quantity-options.ts'
import { defineCommand } from '../../../bot/chat/command.ts'
import { type RegisteredText, registrationOf } from '../../../bot/discord/connect/registration.ts'
import type { CommandText } from '../../../bot/text/command-text.ts'
import { en } from '../../../bot/text/en/index.ts'
import { checkPayload } from './fake/check-payload.ts'
import { showProblem } from './fake/problem.ts'

const problemsOf = (body: unknown): readonly string[] =>
  checkPayload('PUT', '/applications/123456789012345678/commands', body).map(showProblem)

interface Node {
  readonly name: string
  readonly options?: readonly Node[]
  readonly choices?: readonly unknown[]
}

const everyKind = defineCommand({
  path: 'every kind',
  topic: 'sums',
  input: z.object({
    often: quantityOptions.amount.optional(),
    jar: jarOptions.jar,
    of: planOptions.plants.optional(),
    'unknown-ok': planOptions.yesNo.optional(),
    name: jarOptions.name,
    note: jarOptions.note.optional(),
    free: option({ read: (text) => text, write: (text) => text }),
  }),
  run: () => {
    throw new Error('is not run')
  },
})

const everyText: CommandText = {
  summary: 'Every kind of option',
  options: {
    often: 'An amount',
    jar: 'A jar',
    of: 'Plants',
    'unknown-ok': 'Yes or no',
    name: 'A name',
    note: 'A note',
    free: 'A text',
  },
  examples: [],
}

const everyLanguage: RegisteredText = {
  commands: { 'every kind': everyText },
  registration: { ...en.registration, groups: { every: 'All of it' } },
}

it('gives each kind of option what it needs, the required ones first', () => {
  const [group] = registrationOf([everyKind], everyLanguage)
  expect(group).toEqual({
    name: 'every',
    description: 'All of it',
    integration_types: [0, 1],
    contexts: [0, 1, 2],
    options: [
      {
        type: 1,
        name: 'kind',
        description: 'Every kind of option',
        options: [
          {
            type: 3,
            name: 'jar',
            description: 'A jar',
            required: true,
            min_length: 1,
            max_length: 40,
            autocomplete: true,
          },
          { type: 3, name: 'name', description: 'A name', required: true, min_length: 1, max_length: 40 },
          { type: 3, name: 'free', description: 'A text', required: true, min_length: 1, max_length: 200 },
          { type: 3, name: 'often', description: 'An amount', required: false, min_length: 1, max_length: 200 },
          {
            type: 3,
            name: 'of',
            description: 'Plants',
            required: false,
            min_length: 1,
            max_length: 600,
            autocomplete: true,
          },
          {
            type: 3,
            name: 'unknown-ok',
            description: 'Yes or no',
            required: false,
            choices: [
              { name: 'yes', value: 'yes' },
              { name: 'no', value: 'no' },
            ],
          },
          { type: 3, name: 'note', description: 'A note', required: false, min_length: 1, max_length: 1000 },
        ],
      },
    ],
  })
  expect(problemsOf(registrationOf([everyKind], everyLanguage))).toEqual([])
})

it('carries a second language through, names and choices too', () => {
  const italian: RegisteredText = {
    commands: {
      'every kind': { ...everyText, summary: 'Di tutto', options: { ...everyText.options, jar: 'Un vaso' } },
    },
    registration: {
      help: { summary: 'Aiuto', options: { command: 'Il comando' }, examples: [] },
      ask: { summary: 'ask', options: { text: 'text' }, examples: [] },
      groups: { every: 'Tutto' },
      choices: { yes: 'sì' },
      names: { every: 'ogni', kind: 'tipo', jar: 'vaso' },
    },
  }
  const all = registrationOf([everyKind], everyLanguage, { it: italian })
  expect(problemsOf(all)).toEqual([])
  expect(all[0]).toMatchObject({
    name_localizations: { it: 'ogni' },
    description_localizations: { it: 'Tutto' },
    options: [{ name_localizations: { it: 'tipo' }, description_localizations: { it: 'Di tutto' } }],
  })
  const options = all[0]!.options![0] as Node
  expect(options.options![0]).toMatchObject({
    name_localizations: { it: 'vaso' },
    description_localizations: { it: 'Un vaso' },
  })
  expect(options.options!.find(({ name }) => name === 'unknown-ok')!.choices).toEqual([
    { name: 'yes', value: 'yes', name_localizations: { it: 'sì' } },
    { name: 'no', value: 'no' },
  ])
  expect(all[1]).toMatchObject({ name: 'help', description_localizations: { it: 'Aiuto' } })
})

it('refuses a word that is a command and a group, and a command without its text', () => {
  const plain = { ...everyKind, path: 'every' }
  const texts = { ...everyLanguage, commands: { 'every kind': everyText, every: everyText } }
  expect(() => registrationOf([plain, everyKind], texts)).toThrow(TypeError)
  expect(() => registrationOf([everyKind], { ...everyLanguage, commands: {} })).toThrow(TypeError)
})
