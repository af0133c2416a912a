import { expect, it } from 'vitest'
import { type UsedItem, usedInJar } from '../../../core/cost/used.ts'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { added, plant, started, storyFrom, strained } from '../jar/jars.ts'
import { spirit } from '../recipe-plan/wishes.ts'

const begun = started({
  plants: [plant('lemon_peel', 100, { count: 10 })],
  spirits: [spirit(500, 95)],
  sweetenings: whiteSugar(exactly(30)),
})

const amountsIn = (items: readonly UsedItem[]) =>
  items.flatMap((item) => {
    if (item.kind === 'plant') return [['plant', item.plant.massG, item.plant.count]]
    if (item.kind === 'spirit') return [['spirit', item.spirit.volumeMl]]
    return item.kind === 'sweetener' ? [['sweetener', item.sweetener.massG]] : []
  })

/** Added by hand. */
it('counts together what went in at the start and later', () => {
  const more = added({
    plants: [plant('lemon_peel', 50, { count: 5 })],
    spirits: [spirit(200, 95)],
    sweetenings: whiteSugar(exactly(20)),
  })
  const [plants, spirits, sugar] = amountsIn(usedInJar(storyFrom(begun, more)).items)
  expect(plants).toEqual(['plant', 150, 15])
  expect(spirits).toEqual(['spirit', expect.closeTo(700, 9)])
  expect(sugar).toEqual(['sweetener', 50])
})

const sugarG = (...more: readonly Happening[]): number => {
  const begun = started({
    plants: [plant('sloe', 500)],
    spirits: [spirit(700, 40)],
    sweetenings: whiteSugar(exactly(250)),
  })
  const { items } = usedInJar(storyFrom(begun, strained(), ...more))
  return items.reduce((sum, item) => sum + (item.kind === 'sweetener' ? item.sweetener.massG : 0), 0)
}

it('counts the sugar on the strained fruit with the sugar in the jar, and not again when it is poured back', () => {
  const onFruit: Happening = { kind: 'fruit_sugared', sweetenings: whiteSugar(exactly(200)) }
  const poured: Happening = {
    kind: 'sweetened',
    waterG: exactly(0),
    sweetenings: [],
    ofFruit: { measured: null },
  }
  expect(sugarG()).toBeCloseTo(250, 9)
  expect(sugarG(onFruit)).toBeCloseTo(450, 9)
  expect(sugarG(onFruit, poured)).toBeCloseTo(450, 9)
})
