import { afterAll, beforeAll, expect, it } from 'vitest'
import { checkPayload } from './fake/check-payload.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'
import type { Json, Upload } from './fake/json.ts'
import { showProblem } from './fake/problem.ts'

let fake: FakeDiscord
beforeAll(async () => {
  fake = await startFake()
})
afterAll(() => fake.stop())

const V2 = 1 << 15
const EPHEMERAL = 1 << 6
const none = { allowed_mentions: { parse: [] } }
const many = <Item>(count: number, item: (index: number) => Item): readonly Item[] =>
  Array.from({ length: count }, (_, i) => item(i))
const text = (content: string): Json => ({ type: 10, content })
const button = (id: string, more: Json = {}): Json => ({ type: 2, style: 1, label: 'Done', custom_id: id, ...more })
const row = (...components: readonly Json[]): Json => ({ type: 1, components })
const select = (more: Json = {}): Json => ({ type: 3, custom_id: 's', options: [{ label: 'a', value: 'a' }], ...more })

type Case = readonly [what: string, body: unknown, said: string]

const classic = (more: Json): Json => ({ content: 'x', ...none, ...more })
const v2 = (components: readonly Json[], more: Json = {}): Json => ({ flags: V2, components, ...none, ...more })

const MESSAGES: readonly Case[] = [
  ['2001 characters', classic({ content: 'x'.repeat(2001) }), '2000 are allowed'],
  ['an empty message', none, 'empty message'],
  ['no allowed_mentions', { content: 'x' }, 'allowed_mentions: is missing'],
  ['@everyone', { content: 'x', allowed_mentions: { parse: ['everyone'] } }, 'parse: must be empty'],
  ['an unknown key', classic({ colour: 3 }), 'colour: is not a key'],
  ['a key of another type', classic({ content: 3 }), 'content: '],
  ['an ephemeral message in a channel', classic({ flags: EPHEMERAL }), 'only an answer'],
  ['a nonce of 26 characters', classic({ nonce: 'n'.repeat(26) }), 'nonce: '],
  ['41 nested components', v2([{ type: 17, components: many(40, () => text('x')) }]), '41 components'],
  ['4001 characters of text in two', v2([text('x'.repeat(4000)), text('x')]), '4001 characters of text'],
  ['V2 with content', v2([text('x')], { content: 'x' }), 'content: cannot be used'],
  ['V2 with embeds', v2([text('x')], { embeds: [{ title: 'x' }] }), 'embeds: cannot be used'],
  ['V2 components without the flag', classic({ components: [text('x')] }), 'needs the flag'],
  ['a text without content', v2([text('')]), 'content: '],
  ['an empty container', v2([{ type: 17, components: [] }]), 'components: '],
  ['a custom_id of 101', classic({ components: [row(button('x'.repeat(101)))] }), 'custom_id: '],
  ['a custom_id twice', classic({ components: [row(button('a'), button('a'))] }), '"a" occurs twice'],
  ['a label of 81', classic({ components: [row(button('a', { label: 'x'.repeat(81) }))] }), 'label: '],
  ['a button without a label', classic({ components: [row(button('a', { label: '' }))] }), 'a label or an emoji'],
  [
    'a link with a custom_id',
    classic({ components: [row(button('a', { style: 5, url: 'https://a.test' }))] }),
    'style 5',
  ],
  ['six buttons in a row', classic({ components: [row(...many(6, (i) => button(`b${i}`)))] }), 'components: '],
  ['six rows', classic({ components: many(6, (i) => row(button(`b${i}`))) }), 'more than 5 rows'],
  ['a select beside a button', classic({ components: [row(select(), button('a'))] }), 'or one select'],
  [
    '26 options',
    classic({ components: [row(select({ options: many(26, (i) => ({ label: 'a', value: `${i}` })) }))] }),
    'options',
  ],
  [
    'an option twice',
    classic({ components: [row(select({ options: many(2, () => ({ label: 'a', value: 'a' })) }))] }),
    'twice',
  ],
  ['more to choose than there is', classic({ components: [row(select({ max_values: 2 }))] }), 'number of options'],
  ['fewer at most than at least', classic({ components: [row(select({ min_values: 2 }))] }), 'min_values is above'],
  ['embeds of 6001 in all', classic({ embeds: many(2, () => ({ description: 'x'.repeat(3001) })) }), '6000 characters'],
  ['an embed title of 257', classic({ embeds: [{ title: 'x'.repeat(257) }] }), 'title: '],
  ['a file that was not sent', v2([{ type: 13, file: { url: 'attachment://a.png' } }]), 'a.png was not sent'],
]

const callback = (type: number, data: Json): Json => ({ type, data })
const label = (component: Json, more: Json = {}): Json => ({ type: 18, label: 'Note', component, ...more })
const input = (id = 'i', more: Json = {}): Json => ({ type: 4, custom_id: id, style: 1, ...more })
const modal = (components: readonly Json[], more: Json = {}): Json =>
  callback(9, { custom_id: 'm', title: 'Note', components, ...more })

const CALLBACKS: readonly Case[] = [
  ['an unknown type', { type: 12 }, 'not a type of callback'],
  ['2001 characters', callback(4, classic({ content: 'x'.repeat(2001) })), 'content: '],
  ['no allowed_mentions', callback(4, { content: 'x' }), 'data.allowed_mentions: is missing'],
  ['41 nested components', callback(7, v2(many(41, () => text('x')))), 'components: '],
  ['26 choices', callback(8, { choices: many(26, (i) => ({ name: `${i}`, value: 'x' })) }), 'choices'],
  ['a choice named with 101', callback(8, { choices: [{ name: 'x'.repeat(101), value: 'x' }] }), 'name: '],
  ['a choice of 101', callback(8, { choices: [{ name: 'x', value: 'x'.repeat(101) }] }), 'longer than 100'],
  ['a form title of 46', modal([label(input())], { title: 'x'.repeat(46) }), 'title: '],
  ['a label of 46', modal([label(input(), { label: 'x'.repeat(46) })]), 'label: '],
  ['six fields', modal(many(6, (i) => label(input(`i${i}`)))), '5 are allowed'],
  ['no field', modal([]), 'components: '],
  ['a field twice', modal(many(2, () => label(input()))), '"i" occurs twice'],
  ['a field with two labels', modal([label(input('i', { label: 'Note' }))]), 'no label of its own'],
  ['a field in a row without a label', modal([row(input())]), 'needs a label'],
  [
    'a field shorter than its least',
    modal([label(input('i', { min_length: 3, max_length: 2 }))]),
    'min_length is above',
  ],
  ['a value that is too long', modal([label(input('i', { max_length: 2, value: 'abc' }))]), 'longer than max_length'],
]

const option = (name: string, more: Json = {}): Json => ({ type: 3, name, description: 'x', ...more })
const command = (options: readonly Json[], more: Json = {}): readonly Json[] => [
  { name: 'mix', description: 'x', options, ...more },
]

const COMMANDS: readonly Case[] = [
  ['an upper-case name', command([], { name: 'Mix' }), '"Mix" is not a legal name'],
  ['a name with a space', command([option('a b')]), '"a b" is not a legal name'],
  ['a name of 33', command([], { name: 'x'.repeat(33) }), 'name: '],
  ['two of a name', [...command([]), ...command([])], '"mix" occurs twice'],
  ['two options of a name', command([option('a'), option('a')]), '"a" occurs twice'],
  ['an empty description', command([option('a')], { description: '' }), 'description: is empty'],
  ['a description of 101', command([], { description: 'x'.repeat(101) }), 'description: '],
  ['required after optional', command([option('a'), option('b', { required: true })]), 'options.1: a required option'],
  ['26 options', command(many(26, (i) => option(`a${i}`))), 'options'],
  ['26 choices', command([option('a', { choices: many(26, (i) => ({ name: `${i}`, value: 'x' })) })]), 'choices'],
  ['a choice twice', command([option('a', { choices: many(2, () => ({ name: 'a', value: 'x' })) })]), 'occurs twice'],
  ['a choice of 101', command([option('a', { choices: [{ name: 'a', value: 'x'.repeat(101) }] })]), 'longer than 100'],
  [
    'choices and autocomplete',
    command([option('a', { autocomplete: true, choices: [{ name: 'a', value: 'a' }] })]),
    'exclude',
  ],
  [
    'a least value above the most',
    command([option('a', { type: 10, min_value: 2, max_value: 1 })]),
    'min_value is above',
  ],
  ['a least length above the most', command([option('a', { min_length: 2, max_length: 1 })]), 'min_length is above'],
  ['subcommands beside options', command([option('a', { type: 1 }), option('b')]), 'mixes subcommands'],
  ['an empty group', command([option('a', { type: 2, options: [] })]), 'a group without'],
  ['101 commands', many(101, (i) => ({ name: `c${i}`, description: 'x' })), '100 are allowed'],
  ['an unknown locale', command([], { name_localizations: { 'xx-XX': 'mix' } }), 'not a locale'],
  [
    '8000 characters',
    command(many(25, (i) => option(`a${i}`, { choices: many(4, (j) => ({ name: `${j}`, value: 'x'.repeat(80) })) }))),
    '8000 are allowed',
  ],
]

const put = (method: string, path: string, body: unknown): Promise<Response> =>
  fetch(`${fake.api}/v10${path}`, {
    method,
    headers: { authorization: `Bot ${fake.token}`, 'content-type': 'application/json' },
    body: JSON.stringify(body),
  })

const refused = async (method: string, path: string, body: unknown, said: string): Promise<void> => {
  const before = fake.faults().length
  const answer = await put(method, path, body)
  expect(answer.status).toBe(400)
  expect(await answer.json()).toMatchObject({ code: 50035, message: 'Invalid Form Body' })
  expect(fake.faults()).toHaveLength(before + 1)
  expect(fake.faults().at(-1)!.problems.join('\n')).toContain(said)
}

it.each(MESSAGES)('refuses a message: %s', (_, body, said) =>
  refused('POST', `/channels/${fake.channel.id}/messages`, body, said),
)
it.each(CALLBACKS)('refuses a callback: %s', (_, body, said) =>
  refused('POST', '/interactions/1/token/callback', body, said),
)
it.each(COMMANDS)('refuses a registration: %s', (_, body, said) =>
  refused('PUT', `/applications/${fake.applicationId}/commands`, body, said),
)

const found = (body: Json | undefined, files: readonly Upload[], method = 'POST'): string =>
  checkPayload(method, '/channels/1/messages', body, files).map(showProblem).join()

it('refuses a body where there is none, and more or greater files than a message takes', () => {
  const upload = (index: number, name: string, size: number): Upload => ({
    index: String(index),
    name,
    mime: 'image/png',
    bytes: new Uint8Array(size),
  })
  const listing = (files: readonly Upload[]): Json =>
    classic({ attachments: files.map(({ index }) => ({ id: index })) })
  const ten = many(10, (i) => upload(i, `${i}.png`, 1))
  expect(found(listing(ten), ten)).toBe('')
  const eleven = [...ten, upload(10, '10.png', 1)]
  expect(found(listing(ten), eleven)).toContain('more than 10 files')
  const great = [upload(0, 'a.png', 10 * 1024 * 1024 + 1)]
  expect(found(listing(great), great)).toBe('attachments: a.png is above 10 MiB')
  const twins = many(2, (i) => upload(i, 'a.png', 1))
  expect(found(listing(twins), twins)).toBe('attachments: two files are called a.png')
  expect(found({}, [], 'GET')).toBe('(body): this route takes no body')
})
