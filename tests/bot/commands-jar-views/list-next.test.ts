import { expect, it } from 'vitest'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import type { Jar } from '../../../store/person.ts'
import { deskWith, jarOf, startedAs } from './jars.ts'

/** Steeping since 8 November, to be tasted from the 15th and strained from 1 to 10 December. */
const WINDOW = { tasteFrom: '2026-11-15', strainFrom: '2026-12-01', strainBy: '2026-12-10', restDays: 30 }
const START = { ...startedAs('lemon', {}, WINDOW), on: '2026-11-08' }

const listed = async (jar: Jar, isoDay: string) =>
  (await deskWith({ jars: [jar] }, { nowMs: Date.parse(`${isoDay}T12:00:00Z`), width: 200 })).textOf('/jar list')

it('names a shake too where it comes first and there is nothing to do', async () => {
  expect(await listed(jarOf('aaaa1', [START]), '2026-11-08')).toContain(
    'Coming: shake lemon tomorrow, taste lemon on 15 November.',
  )
  expect(await listed(jarOf('aaaa1', [START]), '2026-11-09')).toContain('Coming: taste lemon on 15 November.')
})

it('names the hour to which all was put off', async () => {
  const untilMs = Date.parse('2026-12-11T18:00:00Z')
  const putOff = { kind: 'put_off', untilDay: '2026-12-11', untilMs, on: '2026-12-11' } as const
  const text = await listed(jarOf('aaaa1', [START, putOff]), '2026-12-11')
  expect(text).toContain('Coming: strain and shake lemon today at 18:00.')
  expect(text).toContain('strain and shake today at 18:00')
})

it('counts nothing towards readiness once a bottle was opened', async () => {
  const jar = jarOf('aaaa1', [
    START,
    { kind: 'strained', measured: null, strength: null, rinseWaterG: START.waterG, on: '2026-12-05' },
    { kind: 'sweetened', waterG: START.waterG, sweetenings: whiteSugar(START.waterG), on: '2026-12-06' },
    { kind: 'bottled', bottles: [{ count: 2, volumeMl: 500 }], on: '2026-12-07' },
    { kind: 'opened', on: '2026-12-10' },
  ])
  expect(await listed(jar, '2026-12-11')).toMatch(/lemon +ready +█{10} day 34$/m)
})

it('names all that comes on the soonest day, whatever else is to do today', async () => {
  const strained = { kind: 'strained', measured: null, strength: null, rinseWaterG: START.waterG } as const
  const jars = [
    jarOf('aaaa1', [{ ...START, name: 'old', on: '2026-10-20' }]),
    jarOf('aaaa2', [
      { ...START, name: 'mine', on: '2026-11-08' },
      { kind: 'shaken', on: '2026-11-20' },
    ]),
    jarOf('aaaa3', [
      { ...START, name: 'mum’s', on: '2026-11-01' },
      { ...strained, on: '2026-11-20' },
    ]),
  ]
  const listedAll = async (all: readonly Jar[]) => (await deskWith({ jars: all }, { width: 300 })).textOf('/jar list')
  expect(await listedAll(jars.slice(1))).toContain('Coming: shake mine tomorrow,')
  expect(await listedAll(jars.slice(0, 2))).toMatch(/Coming: shake mine tomorrow, strain .* on 1 December\.$/m)
})
