import { expect, it } from 'vitest'
import { decodeCustomId } from '../../../bot/discord/buttons/custom-id.ts'
import { readForm } from '../../../bot/discord/forms/form.ts'
import { makeForm, shareToMake } from '../../../bot/discord/forms/form-for.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../test-desk.ts'
import { checkPayload } from './fake/check-payload.ts'

const FRIEND = '123456789012345678'
const OWNER = '987654321098765432'
const REF = `${BigInt(OWNER).toString(36)}.3m8qv0zt`

const form = makeForm({ userId: FRIEND, ref: { owner: OWNER, shareId: '3m8qv0zt' } }, en.makeForm)

it('is a form that Discord takes, of whoever asked for it', () => {
  expect(checkPayload('POST', `/interactions/${FRIEND}/token/callback`, { type: 9, data: form })).toEqual([])
  expect(decodeCustomId(form.custom_id)).toEqual({ owner: FRIEND, line: `/share make:${REF}`, nudgeId: null })
})

it('asks for every option of /share make:', () => {
  const asked = form.components.map((each) => ('component' in each ? each.component : null))
  const names = asked.map((each) => (each !== null && 'custom_id' in each ? each.custom_id : null))
  const told = Object.entries(en.commands.share.options).filter(([, text]) => text.startsWith('With make:'))
  expect(names.toSorted()).toEqual(told.map(([name]) => name).toSorted())
})

it('is asked for by a share to make that says nothing yet', () => {
  expect(shareToMake({ path: 'share', options: { make: REF } })).toBe(REF)
  expect(shareToMake({ path: 'share', options: { make: REF, spirit: '1 l' } })).toBeNull()
  expect(shareToMake({ path: 'share', options: { jar: 'lemon' } })).toBeNull()
  expect(shareToMake({ path: 'share', options: {} })).toBeNull()
})

it('fills in what there is, and takes no other field', () => {
  const field = (customId: string, value: string) => ({ type: 18, component: { type: 4, customId, value } })
  const sent = [
    field('spirit', ' 700 ml '),
    field('to-strength', '22%'),
    field('bottles', ''),
    field('withdraw', 'x'),
    field('__proto__', 'x'),
  ]
  expect(readForm(`/share make:${REF}`, sent, commands)).toEqual({
    line: `/share make:${REF}`,
    filled: { spirit: '700 ml', 'to-strength': '22%' },
  })
})
