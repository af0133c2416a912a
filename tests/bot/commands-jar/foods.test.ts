import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, test } from 'vitest'
import type { Person } from '../../../store/person.ts'
import { newAsker } from '../asker.ts'
import { jarDesk } from './desk.ts'

const FOOD = '/jar start own of:40 g jaboticaba spirit:1 l 60% unknown-ok:yes days:10'

/** Folk, regional and foreign names of poisons: from memory. */
const { refused }: { refused: readonly string[] } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../core/botanical/refused-names.json'), 'utf8'),
)

/** Every fourteenth: all of them are tried in core. */
const SOME = refused.filter((_, at) => at % 14 === 0)

describe('names of poisons, with and without unknown-ok', () => {
  it('go into no jar, at the start, later or by a correction', async () => {
    const desk = jarDesk()
    await desk.ask(FOOD)
    for (const name of SOME) {
      for (const line of [
        `/plan of:20 g ${name} spirit:1 l 50%`,
        `/jar start bad of:20 g ${name} spirit:1 l 50%`,
        `/jar add own of:20 g ${name}`,
        `/jar correct own of:20 g ${name}`,
      ]) {
        for (const answer of ['', ' unknown-ok:yes']) {
          expect([line, (await desk.refused(line + answer)).code]).toEqual([line, 'refused'])
        }
      }
    }
    expect((await desk.storyOf('own')).happened).toHaveLength(1)
  })
})

describe('a food without amounts', () => {
  it.each([
    ['/plan of:300 g feijoa spirit:1 l 50%', '/plan of:300 g feijoa spirit:1 l 50% unknown-ok:yes days:14'],
    [
      '/jar start f of:300 g feijoa spirit:1 l 50%',
      '/jar start name:f of:300 g feijoa spirit:1 l 50% unknown-ok:yes days:14',
    ],
    ['/jar add own of:30 g feijoa', '/jar add own of:30 g feijoa unknown-ok:yes'],
    ['/jar correct own of:30 g feijoa', '/jar correct own of:30 g feijoa unknown-ok:yes'],
    ['/plan of:300 g azaroles spirit:1 l 50%', '/plan of:300 g azarole flesh spirit:1 l 50% unknown-ok:yes days:14'],
    [
      '/plan of:8 lemons + azaroles spirit:1 l 50%',
      '/plan of:8 lemons + 300 g azarole flesh spirit:1 l 50% unknown-ok:yes days:14',
    ],
    ['/plan of:10 g juniper from my garden spirit:1 l 50%', '/plan of:10 g juniper I planted spirit:1 l 50%'],
  ])('%s is answered with the line to type, which runs', async (line, as) => {
    const desk = jarDesk()
    await desk.ask(FOOD)
    const { message } = await desk.refused(line)
    expect(message.endsWith(` ${as}`)).toBe(true)
    await desk.ask(as)
  })

  it('is asked about after what is on no list', async () => {
    const { message } = await jarDesk().refused('/plan of:300 g feijoa + 20 g zorblax spirit:1 l 50%')
    expect(message).toBe('I don’t know “zorblax”. What else is it called?')
  })

  it('is named in /botanical with a line that runs', async () => {
    const desk = jarDesk()
    const { message } = await desk.refused('/botanical feijoa')
    await desk.ask(/\/plan .+$/.exec(message)![0])
  })

  it('is no more than is usual of its kind in the whole jar', async () => {
    const desk = jarDesk()
    await desk.ask('/jar start t of:20 g honeybush spirit:1 l 50% unknown-ok:yes')
    await desk.ask('/jar add t of:10 g honeybush unknown-ok:yes')
    const { code, message } = await desk.refused('/jar add t of:10 g honeybush unknown-ok:yes')
    expect([code, message]).toEqual(['over_ceiling', expect.stringContaining('30 g in a litre')])
  })

  it('tells what it can do to whoever drinks of it', async () => {
    const desk = jarDesk()
    const { cautions } = await desk.ask('/plan of:300 g carambola spirit:1 l 50% unknown-ok:yes')
    expect(cautions[0]!.text).toContain('never with kidney disease')
  })
})

test.each(['meadow thing', 'oleander leaves', 'zakkum'])(
  'a jar of before that holds %s is not made again',
  async (name) => {
    const asker = newAsker()
    const desk = jarDesk('2026-11-01', asker)
    await desk.ask(FOOD)
    await asker.store.update(
      asker.userId,
      (person) => JSON.parse(JSON.stringify(person).replaceAll('jaboticaba', name)) as Person,
    )
    const { code, option } = await desk.refused('/again own')
    expect([code === 'refused' || code === 'not_found', option]).toEqual([true, 'of'])
    expect((await desk.person()).jars).toHaveLength(1)
  },
)

test.each([
  'mountain laurel',
  'meadow crocus',
  'rose laurel',
  'elder twigs',
  'hedge laurel shrub',
  'angelica tree',
  'juniper hedge',
])('/botanical and /cautions of %s propose no double of it', async (name) => {
  const desk = jarDesk()
  for (const line of [`/botanical ${name}`, `/cautions of:${name}`]) {
    const { message } = await desk.refused(line)
    expect(message).not.toMatch(/Nearest: .*(?:bay|saffron|rose|elder|angelica|juniper)/)
  }
})

test('the double of olive is oleander', async () => {
  const desk = jarDesk()
  const { cautions } = await desk.ask('/cautions of:olive leaf')
  expect(cautions.map(({ text }) => text).join()).toContain('Oleander')
  expect(cautions.map(({ text }) => text).join()).not.toContain('true bay')
})
