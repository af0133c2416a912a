import { expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { refusedNames } from '../../../core/botanical/refuse/refused-names.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { eachHolds } from '../../each-holds.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'

const withoutAccents = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '')
const harmful = allRefusedNames.map(({ name, refused }) => [name, refused.id] as const)

test('the refuse list has its 39 rows', () => {
  expect(refusedNames).toHaveLength(39)
})

/** What a text is refused with, and as what; null where it is not. */
const verdictOn = (text: string): string | null => {
  try {
    expectNotRefused(text)
    return null
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    return `${error.problem} ${(error.values as { readonly id?: string }).id}`
  }
}

test('what is refused is so alone, loud, without accents and in a mixture', () =>
  eachHolds(
    harmful,
    ([name]) => name,
    ([name, id]) => {
      const texts = new Set([
        name,
        name.toUpperCase(),
        withoutAccents(name),
        name.replaceAll("'", '’'),
        name.replaceAll(' ', '-'),
        `8 lemons + 30 g ${name} + 10 g ginger`,
        `8 limoni, ${name}, zenzero`,
      ])
      const others = [...texts].filter((text) => verdictOn(text) !== `refused_botanical ${id}`)
      if (others.length > 0) throw new Error(`is not, as ${id}: ${others.join(' | ')}`)
    },
  ))

test('no name of the catalogue is refused, alone or in a mixture', () =>
  eachHolds(
    catalogue.flatMap(({ names }) => [names.title, ...names.en, ...names.it, ...names.latin]),
    String,
    (name) => {
      expectNotRefused(name)
      expectNotRefused(name.toUpperCase())
      expectNotRefused(`8 lemons + 30 g ${name} + ginger`)
    },
  ))

test.each([
  ['star anise, Japanese', 'jp_star_anise'],
  ['leaves of rhubarb', 'rhubarb_tomato'],
  ['leaves from a fig tree', 'fig_leaf'],
  ['bay laurel hedge', 'cherry_laurel'],
  ['Digitalis alba', 'foxglove'],
  ['tоbacco', 'tobacco'], // a Cyrillic о
])('%s is refused as %s, whatever the order or the letters', (text, id) => {
  expect(refusedValues(() => expectNotRefused(text))).toMatchObject({ id })
})

test.each([
  ['tobaco', 'tobacco'],
  ['t0bacco', 'tobacco'],
  ['fox glove', 'foxglove'],
  ['foxglovess', 'foxglove'],
  ['castorbean', 'castor'],
  ['beladonna', 'nightshade'],
  ['hemlok', 'hemlock'],
  ['oleanderr leaves', 'oleander'],
  ['Japanese star anis', 'jp_star_anise'],
  ['lilly of the valley', 'lily_valley'],
  ['8 lemons + aconiite', 'aconite'],
])('%s is asked back, being near %s', (text, id) => {
  expect(refusal(() => expectNotRefused(text))).toBe('ambiguous near_refused')
  expect(refusedValues(() => expectNotRefused(text))).toMatchObject({ id })
})

test.each([
  'nocciole',
  'rabarbaro',
  'almonds, bitter orange peel',
  'sour cherries without stones',
  'cherries with stones',
  'apricots, stones removed',
  'olive leaf',
  'rose petals, unsprayed',
  '10 untreated lemons from the garden',
  'lemon peel cut in strips',
  'wild fennel',
  'finocchietto selvatico',
  'olive oil',
])('%s is not refused', (text) => {
  expectNotRefused(text)
})

// Common practice, no source: half as much again as the most that is usual of it is still within its limit.
test.each([
  ['genepi', null],
  ['saffron', null],
  ['coffee bean', 'coffee_whole'],
  ['fennel seed', 'fennel_seed'],
])('in place of an oil the plant itself is offered where it is easily kept within its limit: %s', (name, instead) => {
  const { ceiling, dose } = catalogue.find(({ names }) => names.en.includes(name))!
  expect(ceiling!.gPerLSpirit > 1.5 * dose.maxGPerL).toBe(instead !== null)
  expect(ceiling!.gPerLSpirit / dose.maxGPerL).toBeLessThan(1.7)
  expect(refusedValues(() => expectNotRefused(`${name} essential oil`))).toMatchObject({
    id: 'essential_oils',
    instead,
  })
})
