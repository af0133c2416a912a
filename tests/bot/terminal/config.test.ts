import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readConfig } from '../../../bot/config.ts'

const USUAL = { width: null, noColour: false, data: './data', zone: null, discord: null }

it.each<[environment: Record<string, string>, config: object]>([
  [{}, USUAL],
  [{ LARDERBELL_WIDTH: '', NO_COLOR: '', LARDERBELL_DATA: ' ', LARDERBELL_ZONE: '' }, USUAL],
  [
    { LARDERBELL_WIDTH: ' 100 ', NO_COLOR: '1' },
    { ...USUAL, width: 100, noColour: true },
  ],
  [{ LARDERBELL_WIDTH: '40' }, { ...USUAL, width: 40 }],
  [{ COLUMNS: '44' }, { ...USUAL, width: 44 }],
  [
    { COLUMNS: '44', LARDERBELL_WIDTH: '60' },
    { ...USUAL, width: 60 },
  ],
  [{ COLUMNS: '20' }, { ...USUAL, width: 40 }],
  [{ COLUMNS: '999' }, { ...USUAL, width: 200 }],
  [{ COLUMNS: '0' }, USUAL],
  [{ COLUMNS: 'wide' }, USUAL],
  [
    { LARDERBELL_DATA: '/srv/jars', LARDERBELL_ZONE: 'europe/rome' },
    { ...USUAL, data: '/srv/jars', zone: 'Europe/Rome' },
  ],
])('reads %j', (environment, config) => {
  expect(readConfig(environment)).toEqual({ ok: true, config })
})

it.each(['39', '201', '8e1', '80.5', '-80', 'wide', '99999999999'])('refuses a width of %s', (typed) => {
  const values = { typed, least: 40, most: 200 }
  expect(readConfig({ LARDERBELL_WIDTH: typed })).toEqual({ ok: false, wrong: [{ problem: 'bad_width', values }] })
})

it.each<[typed: string, nearest: string | null]>([
  ['Europe/Rom', 'Europe/Rome'],
  ['+02:00', null],
  ['Larderland', null],
])('refuses a zone of %s, beside whatever else is wrong', (typed, nearest) => {
  const { ok, wrong } = readConfig({ LARDERBELL_ZONE: typed, LARDERBELL_WIDTH: '7' }) as never as Record<
    string,
    unknown
  >
  expect([ok, wrong]).toEqual([
    false,
    [expect.objectContaining({ problem: 'bad_width' }), { problem: 'bad_zone', values: { typed, nearest } }],
  ])
})

it('has every setting in .env.example', () => {
  const example = readFileSync(new URL('../../../.env.example', import.meta.url), 'utf8')
  for (const name of ['LARDERBELL_WIDTH', 'LARDERBELL_DATA', 'LARDERBELL_ZONE', 'NO_COLOR']) {
    expect(example).toMatch(new RegExp(`^#${name}=`, 'm'))
  }
})
