import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readConfig } from '../../../bot/config.ts'

it.each<[environment: Record<string, string>, config: object]>([
  [{}, { width: null, noColour: false }],
  [
    { LARDERBELL_WIDTH: '', NO_COLOR: '' },
    { width: null, noColour: false },
  ],
  [
    { LARDERBELL_WIDTH: ' 100 ', NO_COLOR: '1' },
    { width: 100, noColour: true },
  ],
  [{ LARDERBELL_WIDTH: '40' }, { width: 40, noColour: false }],
])('reads %j', (environment, config) => {
  expect(readConfig(environment)).toEqual({ ok: true, config })
})

it.each(['39', '201', '8e1', '80.5', '-80', 'wide', '99999999999'])('refuses a width of %s', (typed) => {
  expect(readConfig({ LARDERBELL_WIDTH: typed })).toEqual({ ok: false, wrong: [{ typed, least: 40, most: 200 }] })
})

it('has every setting in .env.example', () => {
  const example = readFileSync(new URL('../../../.env.example', import.meta.url), 'utf8')
  for (const name of ['LARDERBELL_WIDTH', 'NO_COLOR']) expect(example).toMatch(new RegExp(`^#${name}=`, 'm'))
})
