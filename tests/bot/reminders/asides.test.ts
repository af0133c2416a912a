import { describe, expect, it } from 'vitest'
import type { Jar } from '../../../store/person.ts'
import { world } from './inbox.ts'
import { at, happened, jarOf, personWith } from './people.ts'

const ginger = jarOf({ name: 'ginger', startedMs: at('2027-01-17', '18:00') })
const BASIL = { tasteFrom: '2027-01-18', strainFrom: '2027-01-19', strainBy: '2027-01-21' }
const basil = jarOf({ name: 'basil', startedMs: at('2027-01-17', '18:00'), plan: BASIL })

/** A jar that is entered at another time than that at which it was begun. */
const enteredAt = (jar: Jar, enteredMs: number): Jar => ({
  ...jar,
  entries: jar.entries.map((entry) => ({ ...entry, enteredMs })),
})

const jars = (...all: readonly Jar[]) => world({ people: { local: personWith(all) } })
type Here = Awaited<ReturnType<typeof jars>>

const headline = async (here: Here, nowMs: number): Promise<string | undefined> => {
  await here.tick(nowMs)
  return here.box.texts()[0]?.split('\n')[0]
}

describe('straining that is open', () => {
  it('is named on every day on which something is said of its jar, with its last day and how late it is', async () => {
    const here = await jars(ginger, basil)
    const said: (string | undefined)[] = []
    for (const day of ['18', '19', '20', '21', '22']) said.push(await headline(here, at(`2027-01-${day}`)))
    expect(said).toEqual([
      'Shake ginger and basil. Taste basil.',
      'Shake ginger and basil. Taste basil. Strain basil: it’s ready, any day until 21 January.',
      'Shake ginger and basil. Taste basil. Strain basil by 21 January.',
      'Shake ginger and basil. Taste basil. Strain basil: today is the last day.',
      'Basil should have been strained 1 day ago. Shake ginger and basil.',
    ])
  })

  it('brings no message of its own', async () => {
    const here = await world({ people: { local: personWith([basil], { shake: 'off' }) } })
    for (const day of ['18', '19', '20', '21']) await here.tick(at(`2027-01-${day}`))
    here.box.texts()
    await here.tick(at('2027-01-22'))
    expect(here.box.texts()).toEqual([])
  })

  it('is answered by the first button, and not explained again', async () => {
    const here = await jars(ginger, basil)
    await here.tick(at('2027-01-19'))
    here.box.texts()
    await here.tick(at('2027-01-20'))
    const [text] = here.box.texts()
    expect(text).not.toContain('Sieve')
    expect(text).toMatch(/\n {2}basil strained: \/jar strain basil\s+All shaken: \/jar shake all\b/)
  })

  it('leaves room for the one press for all that is shaken', async () => {
    const many = Array.from({ length: 8 }, (_, index) => ({
      ...jarOf({ name: `jar ${index}`, startedMs: at('2027-01-17', '18:00'), plan: BASIL }),
      id: `jar0${index}`,
    }))
    const here = await jars(...many)
    const text = await here.tick(at('2027-01-20')).then(() => here.box.texts()[0])
    expect(text).toContain('All shaken: /jar shake all')
    expect(text?.match(/\/jar strain/g)).toHaveLength(1)
  })
})

describe('a taste that is open', () => {
  const coffee = jarOf({ name: 'coffee', startedMs: at('2027-01-12'), plan: { tasteFrom: '2027-01-15' } })

  it('is named with its jar until somebody tastes', async () => {
    const here = await jars(coffee)
    await here.tick(at('2027-01-15'))
    here.box.texts()
    expect(await headline(here, at('2027-01-16'))).toBe('Shake coffee. Taste coffee.')
    const tasted = happened(personWith([coffee]), 'coffe', at('2027-01-15', '20:00'), {
      kind: 'tasted',
      rating: 2,
      note: null,
    })
    const there = await world({ people: { local: tasted } })
    expect(await headline(there, at('2027-01-16'))).toBe('Shake coffee.')
  })

  it('can be found good or not, each jar by name', async () => {
    const mint = jarOf({ name: 'mint', startedMs: at('2027-01-17', '18:00'), plan: BASIL })
    const here = await world({ people: { local: personWith([basil, mint], { shake: 'off' }) } })
    await here.tick(at('2027-01-18'))
    expect(here.box.texts()[0]!.split(/\s{2,}/)).toEqual(
      expect.arrayContaining(['basil: good: /jar taste basil note:good', 'mint: good: /jar taste mint note:good']),
    )
  })
})

describe('a jar that was entered after it was begun', () => {
  const plan = { tasteFrom: '2027-01-15', strainFrom: '2027-02-01', strainBy: '2027-02-20' }
  const coffee = jarOf({ name: 'coffee', startedMs: at('2027-01-06'), plan })

  it('is asked the next morning for all that the list says', async () => {
    const here = await jars(enteredAt(coffee, at('2027-01-18', '20:00')))
    expect(await headline(here, at('2027-01-19'))).toBe('Shake coffee. Taste coffee.')
  })

  it('is named in the message of the same morning, where one goes out, and once', async () => {
    const mint = jarOf({ name: 'mint', startedMs: at('2027-01-16', '18:00') })
    const here = await jars(mint, enteredAt(coffee, at('2027-01-18', '00:30')))
    expect(await headline(here, at('2027-01-18', '00:31'))).toBe('Shake mint.')
    expect(await headline(here, at('2027-01-18'))).toBe('Shake mint and coffee. Taste coffee.')
    expect(await headline(here, at('2027-01-18', '20:00'))).toBe(undefined)
    const alone = await jars(enteredAt(coffee, at('2027-01-18', '00:30')))
    expect(await headline(alone, at('2027-01-18'))).toBe(undefined)
  })
})
