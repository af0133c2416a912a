import { describe, expect, it, test } from 'vitest'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { jarKeeping } from '../../../core/jar/limits/jar-keeping.ts'
import { isHeld, judgeJar } from '../../../core/jar/limits/judge-jar.ts'
import { withSpirit } from '../../../core/jar/limits/spirit-to-add.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { type JarState, jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { keepingOf } from '../../../core/liquid/keeping.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { added, entriesOf, plant, started, storyFrom, strained, sweetened } from './jars.ts'

const kindsOf = (story: JarState) => judgeJar(story).map(({ kind }) => kind)

const water = (waterG: number): Happening => added({ waterG: exactly(waterG) })

/** The spirit that is said to put a jar right. */
const addIn = (story: JarState) => {
  const [danger] = judgeJar(story)
  return danger !== undefined && 'add' in danger ? danger.add : null
}

/** As if it had been typed into the entries. */
const typing = (option: string, text: string): JarState => {
  const [first, ...rest] = entriesOf(started())
  return jarStateOf([{ ...first!, typed: [[option, text]] }, ...rest])!
}

describe('a jar that is judged', () => {
  it('has nothing wrong with it as long as it keeps', () => {
    expect(kindsOf(storyFrom(started()))).toEqual([])
    expect(kindsOf(storyFrom(started(), water(2900)))).toEqual([])
  })

  it('is worked out once for a story', () => {
    const story = storyFrom(started(), water(8000))
    expect(judgeJar(story)).toBe(judgeJar(story))
  })

  test.each([
    [2900, 'keeps'],
    [4300, 'undecided'],
    [8000, 'ferments'],
  ] as const)('with %f g of water %s', (waterG, word) => {
    expect(jarKeeping(storyFrom(started(), water(waterG)))).toBe(word)
  })

  it('is worked out short where it is strong, with the same answer', () => {
    for (const waterG of [0, 500, 1500, 2000, 2900, 3500, 4300, 8000]) {
      const story = storyFrom(started(), water(waterG))
      expect(jarKeeping(story)).toBe(keepingOf(contentsOf(story).outcome))
    }
  })

  it('is worked out with its ± up to 30 % vol', () => {
    const unsure = { ...spirit(1000, 29.9), abvPercent: { value: 29.9, plusMinus: 12.5 } }
    const story = storyFrom(started({ spirits: [unsure], plants: [] }))
    expect(jarKeeping(story)).toBe('undecided')
    expect(jarKeeping(story)).toBe(keepingOf(contentsOf(story).outcome))
  })

  it('is judged with a plant of which nothing is known, however strong it seems', () => {
    const story = storyFrom(started({ spirits: [spirit(1000, 60)], plants: [plant(null, 1700)] }))
    expect(contentsOf(story).outcome.abvPercent.value).toBeGreaterThan(30)
    expect(jarKeeping(story)).toBe('ferments')
  })

  it('says nothing of what was thrown away, and of what is drunk up only what nobody may have drunk', () => {
    const weak = [started(), strained(), water(8000)] as const
    expect(kindsOf(storyFrom(...weak))).toEqual(['ferments'])
    expect(kindsOf(storyFrom(...weak, { kind: 'discarded' }))).toEqual([])
    expect(kindsOf(storyFrom(...weak, { kind: 'emptied' }))).toEqual([])
    const poison = [started({ plants: [plant(null, 10, { name: 'oleander leaves' })] }), strained()] as const
    expect(kindsOf(storyFrom(...poison, { kind: 'emptied' }))).toEqual(['refused_plant'])
    expect(kindsOf(storyFrom(...poison, { kind: 'discarded' }))).toEqual([])
  })

  it('names what is refused today by the entry, else as it was typed', () => {
    const named = storyFrom(started({ plants: [plant(null, 10, { name: 'oleander leaves' })] }))
    expect(judgeJar(named)).toEqual([{ kind: 'refused_plant', typed: 'oleander leaves' }])
    expect(judgeJar(typing('of', '20 g oleander leaves'))).toEqual([
      { kind: 'refused_plant', typed: '20 g oleander leaves' },
    ])
    expect(judgeJar(typing('spirit', '1 l methylated 95%'))).toEqual([
      { kind: 'refused_spirit', typed: '1 l methylated 95%' },
    ])
    expect(judgeJar(typing('note', '20 g oleander leaves'))).toEqual([])
    expect(judgeJar(typing('of', '20 g lemon peel'))).toEqual([])
    // What is only asked about when it is typed was answered then.
    expect(judgeJar(typing('of', '20 g foxglov'))).toEqual([])
  })

  it('says of a plant outside the catalogue whether it is a food', () => {
    const of = (name: string) => kindsOf(storyFrom(started({ plants: [plant(null, 10, { name })] })))
    expect(of('moon fern')).toEqual(['unknown_plant'])
    expect(of('jaboticaba')).toEqual([])
    expect(of('oleander leaves')).toEqual(['refused_plant'])
  })

  it('names spirit that has been dried, which no distilling makes', () => {
    const of = (percent: number) => judgeJar(storyFrom(started({ spirits: [spirit(1000, percent)] })))
    expect(of(99.5)).toEqual([{ kind: 'refused_spirit', typed: '99.5 % vol' }])
    expect(of(97.2)).toEqual([])
  })

  it('puts poison before too much, and that before what ferments', () => {
    const plants = [plant('nutmeg', 300), plant(null, 1, { name: 'oleander leaves' })]
    const kinds = kindsOf(storyFrom(started({ plants }), water(30_000)))
    expect(kinds).toEqual(['refused_plant', 'over_ceiling', 'ferments'])
  })

  it('is held back by all but what is undecided', () => {
    expect(isHeld(judgeJar(storyFrom(started(), water(4300))))).toBe(false)
    expect(isHeld(judgeJar(storyFrom(started(), water(8000))))).toBe(true)
    expect(isHeld([])).toBe(false)
  })
})

describe('the spirit that puts a jar right', () => {
  test.each<[string, JarState]>([
    ['watered', storyFrom(started(), water(8000))],
    ['nearly there', storyFrom(started(), water(4300))],
    [
      'weak spirit',
      storyFrom(started({ spirits: [spirit(1000, 40)], plants: [plant('raspberry', 200)] }), water(3000)),
    ],
    ['strained and sweet', storyFrom(started({ spirits: [spirit(1000, 40)] }), strained(), sweetened(3000, 400))],
  ])('is enough, and a good deal less is not: %s', (_, story) => {
    const add = addIn(story)!
    expect(jarKeeping(withSpirit(story, add))).toBe('keeps')
    expect(jarKeeping(withSpirit(story, { ...add, spiritMl: add.spiritMl * 0.85 }))).not.toBe('keeps')
  })

  it('is the jar’s own where that does, and strong spirit where it is too weak itself', () => {
    const of = (percent: number) => storyFrom(started({ spirits: [spirit(1000, percent)], plants: [] }), water(3000))
    expect(addIn(of(40))!.abvPercent).toBe(40)
    expect(addIn(of(19))!.abvPercent).toBe(95)
  })

  it('brings what is over its limit within it, and is none where that would be a barrel', () => {
    const of = (massG: number) => storyFrom(started({ plants: [plant('nutmeg', massG)] }))
    const add = addIn(of(3))!
    expect(kindsOf(withSpirit(of(3), add))).toEqual([])
    expect(kindsOf(withSpirit(of(3), { ...add, spiritMl: add.spiritMl * 0.9 }))).toEqual(['over_ceiling'])
    expect(kindsOf(of(300))).toEqual(['over_ceiling'])
    expect(addIn(of(300))).toBeNull()
  })
})
