import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { nearestIds } from '../../../core/botanical/find/nearest-ids.ts'
import { byName, keyOf } from '../../../core/botanical/names/name-index.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { nameWords } from '../../../core/spelling/normalise-name.ts'
import { refusedValues } from '../quantity/refusal.ts'
import { outcomeOf } from './outcome-of.ts'

interface Names {
  readonly refused: readonly string[]
  readonly asked: readonly string[]
  readonly limited: readonly string[]
}

const read = (file: string) => JSON.parse(readFileSync(join(import.meta.dirname, file), 'utf8'))

/** Folk, regional and foreign names: from memory. */
const { refused, asked, limited }: Names = read('refused-names.json')
/** What people steep: from memory. */
const { names: ordinary }: { names: readonly string[] } = read('ordinary-names.json')

/** A name of the catalogue is planned within its limits. */
const isCatalogues = (name: string): boolean => byName.has(keyOf(nameWords(name)))

describe('names of poisons', () => {
  it('are many', () => {
    expect([refused.length > 800, asked.length > 20, limited.length > 50]).toEqual([true, true, true])
  })

  it('are refused, alone and with other plants', () => {
    for (const name of refused) {
      for (const text of [`20 g ${name}`, name, `8 lemons + 20 g ${name}`]) {
        expect([text, outcomeOf(text)]).toEqual([text, 'refused refused_botanical'])
      }
    }
  })

  it('are asked about where there is another meaning', () => {
    for (const name of asked) {
      if (isCatalogues(name)) continue
      expect([name, outcomeOf(`20 g ${name}`)]).toEqual([name, expect.stringMatching(/^(?:ambiguous|refused) /)])
    }
  })

  it('of plants with a limit are planned as these plants or not at all', () => {
    for (const name of limited) {
      if (outcomeOf(`2 kg ${name}`) !== 'planned') continue
      const { plants, unknown } = readPlants(`2 kg ${name}`)
      const isLimited = plants.some(({ botanical }) => botanical.ceiling !== null || isCatalogues(name))
      expect([name, isLimited, unknown.length]).toEqual([name, true, 0])
    }
  })
})

/** By a genus all its species are refused, but those that are food. */
test.each([
  ['Solanum nigrum', 'nightshade'],
  ['Solanum dulcamara var. album', 'nightshade'],
  ['Thevetia peruviana', 'heart_poisons'],
  ['Asclepias syriaca', 'heart_poisons'],
  ['Kalmia latifolia', 'garden_poisons'],
  ['Lathyrus odoratus', 'garden_poisons'],
  ['Ferula communis', 'water_hemlock'],
  ['Illicium parviflorum', 'jp_star_anise'],
])('%s is refused as %s', (name, id) => {
  expect(refusedValues(() => expectNotRefused(name))).toMatchObject({
    id: expect.stringMatching(new RegExp(`${id}|garden_poisons`)),
  })
})

test.each(['Solanum lycopersicum', 'Solanum muricatum', 'Ipomoea batatas', 'Lonicera caerulea', 'Illicium verum'])(
  '%s is food, of a genus that is refused',
  (name) => {
    expectNotRefused(name)
  },
)

test.each(['cistus', 'hera', 'boj', 'tis', 'cis', 'gui'])(
  '%s is a whole word or nothing: a letter more is another word',
  (name) => {
    expect(outcomeOf(`20 g ${name}lle`)).not.toMatch(/near_refused/)
  },
)

describe('what people steep', () => {
  it('is planned, asked about, or refused with a reason: at least 95 % are planned or asked', () => {
    const outcomes = ordinary.map((name) => [name, outcomeOf(`20 g ${name}`)] as const)
    const isMet = (outcome: string) => outcome === 'planned' || outcome.startsWith('ambiguous')
    const unmet = outcomes.filter(([, outcome]) => !isMet(outcome))
    // Dried forms and kinds of chilli and coffee are of the catalogue: counted once it has them.
    const isOfCatalogue = ([name]: readonly [string, string]) =>
      /^dried |chilli|habanero|jalape|chipotle|cayenne|bonnet|coffee|espresso|mace|pinch|heads/.test(name)
    const rest = unmet.filter((each) => !isOfCatalogue(each))
    expect(rest.length).toBeLessThan(0.05 * ordinary.length)
    expect(rest.filter(([, outcome]) => outcome.includes('near_refused'))).toEqual([])
  })
})

describe('what is proposed in place of a name that is not known', () => {
  const DOUBLES =
    'bay_lookalikes carrot_family conifer_lookalikes juniper_species star_anise_adulteration veratrum_confusion'
  const doubles = catalogue.filter(({ hazards }) => hazards.some((hazard) => DOUBLES.split(' ').includes(hazard)))

  it('is never the double of a deadly plant', () => {
    expect(doubles.length).toBeGreaterThan(8)
    for (const { id, names } of doubles) {
      for (const name of names.en) {
        for (const text of [`mountain ${name}`, `${name} tree`, `devil's ${name}`, `${name.slice(0, -1)}x`]) {
          expect([text, nearestIds(nameWords(text)).includes(id)]).toEqual([text, false])
        }
      }
    }
  })

  it('is not saffron, elderflower or sweet almonds, which have one too', () => {
    for (const text of ['meadow saffron x', 'elderflower tree', 'sweet almond tree', 'star anise tree']) {
      const ids = nearestIds(nameWords(text))
      expect(ids.filter((id) => ['saffron', 'elderflower', 'almond_sweet', 'star_anise'].includes(id))).toEqual([])
    }
  })

  it('is still a plain plant, misspelt twice', () => {
    expect(nearestIds(nameWords('gingre rot'))).toContain('ginger')
  })
})
