import { expect, it } from 'vitest'
import { z } from 'zod'
import { optionTextOf } from '../../../bot/calls/option.ts'
import { planOptions } from '../../../bot/calls/plan-options.ts'
import { en } from '../../../bot/text/en/index.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { parseCountryCode } from '../../../core/label/parse-country-code.ts'
import { parseZone } from '../../../core/quantity/time/parse-zone.ts'
import { sampled } from '../../runs.ts'
import { commands } from '../test-desk.ts'
import { OTHER, offersDesk } from './offers.ts'

const { me, offersOf, namesOf, valuesOf } = await offersDesk()

it('offers my jars only, the running ones first, by name', async () => {
  expect(await namesOf('jar show', 'jar', '')).toEqual([
    '@everyone **bold** <@1>',
    'lemon',
    'Walnut',
    'old lemon (done, started 2026-11-01)',
  ])
  expect(await namesOf('jar show', 'jar', 'LEM')).toEqual(['lemon', 'old lemon (done, started 2026-11-01)'])
  expect(await offersOf('jar show', 'jar', '', '323456789012345678')).toEqual([])
  expect((await offersOf('jar show', 'jar', '', OTHER)).map(({ name }) => name)).toEqual(['lemon of theirs'])
})

it('sends a jar by its id, which the grammar takes', async () => {
  const [offer] = await offersOf('jar show', 'jar', 'wal')
  expect(offer!.value).toMatch(/^#[0-9a-z]{5}$/)
  expect(await namesOf('jar show', 'jar', offer!.value.slice(0, 4))).toEqual(['Walnut'])
  expect((await me.ask(`/jar show ${offer!.value}`)).data).toMatchObject({ name: 'Walnut' })
})

it('offers all of them where all of them are meant', async () => {
  expect((await valuesOf('jar shake', 'jar', ''))[0]).toBe('all')
  expect((await valuesOf('jar later', 'jar', 'al'))[0]).toBe('all')
  expect(await valuesOf('jar shake', 'jar', 'lemo')).not.toContain('all')
  expect(await valuesOf('jar taste', 'jar', '')).not.toContain('all')
})

it('completes the second of two jars that are compared', async () => {
  const offers = await offersOf('notebook', 'compare', 'lemon + wal')
  expect(offers.map(({ name }) => name)).toEqual(['lemon + Walnut'])
  const { data } = await me.ask(`/notebook compare:${offers[0]!.value}`)
  expect(data).toMatchObject({ batches: [{ name: 'lemon' }, { name: 'Walnut' }] })
})

it('offers no jar beside itself', async () => {
  expect(await namesOf('notebook', 'compare', 'lemon + lem')).toEqual(['lemon + old lemon (done, started 2026-11-01)'])
  const [{ value: lemon } = { value: '' }] = await offersOf('notebook', 'compare', 'lem')
  expect(await valuesOf('notebook', 'compare', `${lemon} + `)).not.toContain(`${lemon} + ${lemon}`)
})

it.each([
  ['gin', 'ginger'],
  ['8 lem', '8 lemons'],
  ['1 lem', '1 lemon'],
  ['lemn', 'lemon'],
  ['10 lemn', '10 lemons'],
  ['5 green w', '5 green walnuts'],
  ['10 lemon v', '10 lemon verbena'],
  ['8 lemons + 30 g gin', '8 lemons + 30 g ginger'],
  ['8 lemons +gin', '8 lemons + ginger'],
  ['8 lemons, 30 g gin', '8 lemons + 30 g ginger'],
  ['0,5 kg lem', '0,5 kg lemon'],
  ['ZENZ', 'zenzero'],
  ['cinnamon, cey', 'Cinnamon, Ceylon'],
  ['2 stick of cin', '2 stick of Cinnamon, Ceylon'],
  ['rose', 'rose'],
  ['dried sa', 'dried sage'],
])('completes the last plant of %j to %j', async (typed, wanted) => {
  expect((await valuesOf('plan', 'of', typed))[0]).toBe(wanted)
  expect(planOptions.anyPlants.safeParse(wanted).success).toBe(true)
})

it('offers names of the own language before those of others, and none that only hold it somewhere', async () => {
  expect(await valuesOf('plan', 'of', 'gin')).toEqual(['ginger', 'ginepro'])
  expect((await valuesOf('plan', 'of', 'gin', 'it'))[0]).toBe('ginepro')
  expect(await valuesOf('plan', 'of', 'sang')).toEqual(['lapsang souchong', 'arancia sanguinella'])
  expect((await valuesOf('plan', 'of', 'can'))[0]).toBe('cantaloupe')
  expect(await valuesOf('plan', 'of', 'cann')).toEqual(['cannella di Ceylon', 'cannella cassia'])
})

it('offers nothing for what is refused, slip or none', async () => {
  for (const typed of ['tansy', 'tans', 'oleander', 'oleandr', 'xq', 'zzzzz']) {
    expect(await valuesOf('plan', 'of', typed), typed).toEqual([])
  }
})

it('offers the two states of a plant that is not planned without', async () => {
  expect((await valuesOf('plan', 'of', 'sage')).slice(0, 2)).toEqual(['fresh sage', 'dried sage'])
})

it('finds every plant by every name of it that means no other, and nothing that is refused', async () => {
  const reached = new Set<string>()
  const plants = sampled(catalogue, 3)
  for (const { id, names } of plants) {
    for (const name of names.en) if ((await valuesOf('plan', 'of', name)).length > 0) reached.add(id)
  }
  expect(plants.filter(({ id }) => !reached.has(id)).map(({ id }) => id)).toEqual([])
  expect(await valuesOf('plan', 'of', 'tansy')).toEqual([])
})

it('offers zones with what their clocks show, and countries', async () => {
  expect(await offersOf('settings', 'zone', 'rom')).toEqual([{ name: 'Europe/Rome (13:00 now)', value: 'Europe/Rome' }])
  expect(await namesOf('reminders', 'zone', 'new y')).toEqual(['America/New York (07:00 now)'])
  expect((await valuesOf('settings', 'zone', 'lon')).slice(0, 2)).toEqual(['Europe/London', 'Arctic/Longyearbyen'])
  expect((await valuesOf('settings', 'zone', 'par'))[0]).toBe('Europe/Paris')
  expect((await valuesOf('settings', 'zone', 'longy'))[0]).toBe('Arctic/Longyearbyen')
  expect(await valuesOf('settings', 'zone', '')).toHaveLength(25)
  expect((await valuesOf('settings', 'country', 'ital'))[0]).toBe('IT')
  expect((await namesOf('settings', 'country', 'gb'))[0]).toBe('United Kingdom')
  expect(await valuesOf('serving', 'country', 'cote')).toEqual(['Côte d’Ivoire'])
})

it('offers the commands that help knows', async () => {
  expect(await valuesOf('help', 'command', '/jar st')).toEqual(['jar start', 'jar strain'])
  expect(await valuesOf('help', 'command', 'syr')).toEqual(['syrup'])
})

it('offers what went wrong in the words people use, each trouble once', async () => {
  expect(await valuesOf('trouble', 'symptom', 'cloudy')).toEqual(['cloudy', 'cloudy in the cold', 'cloudy later'])
  expect(await valuesOf('trouble', 'symptom', 'mold')).toEqual(['mold'])
})

/** The short run types one letter of three. */
const letters = sampled('abcdefghijklmnopqrstuvwxyz'.split(''), 3)

it('offers only what the option takes', async () => {
  const completed = commands.flatMap(({ path, input }) =>
    Object.entries(input.shape).flatMap(([option, schema]) =>
      optionTextOf(schema).suggested === undefined ? [] : [{ path, option, schema }],
    ),
  )
  expect(new Set(completed.map(({ schema }) => optionTextOf(schema).suggested)).size).toBe(13)
  for (const { path, option, schema } of completed) {
    for (const typed of ['', ...letters, '30 g cin', '30 g gin', '8 lemons + ']) {
      for (const value of await valuesOf(path, option, typed)) {
        // Two amounts of one plant are another fault than a name that is not known.
        if (path !== 'notebook' && !value.startsWith('8 lemons + ')) {
          // A price is typed behind what it is of.
          const whole = option === 'prices' ? `${value} 4/kg` : value
          expect(z.safeParse(schema, whole).success, `/${path} ${option}:${whole}`).toBe(true)
        }
      }
    }
  }
  for (const typed of letters) {
    for (const { name, value } of await offersOf('settings', 'country', typed)) {
      expect(en.suggestions.country(parseCountryCode(value))).toBe(name)
    }
    for (const value of await valuesOf('settings', 'zone', typed)) expect(parseZone(value)).toBe(value)
  }
})
