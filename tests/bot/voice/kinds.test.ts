import { describe, expect, it } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { kindTyped } from '../../../core/botanical/names/kind-typed.ts'
import { newAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'

/** Kinds that are sold under names of their own, and the name that the catalogue has. */
const KINDS = [
  ['1 kg damsons', 'damsons', /\bplums?\b/i],
  ['500 g mirabelles', 'mirabelles', /\bplums?\b/i],
  ['10 clementines', 'clementines', /\bmandarins?\b/i],
  ['8 satsumas', 'satsumas', /\bmandarins?\b/i],
  ['6 blood oranges', 'blood oranges', /(?<!blood )oranges?\b/i],
  ['1 kg nectarines', 'nectarines', /\bpeach(?:es)?\b/i],
  ['500 g morello cherries', 'morello cherries', /\bsour cherr/i],
  ['2 lb Victoria plums', 'Victoria plums', /(?<!Victoria )plums?\b/],
  ['300 g brambles', 'brambles', /\bblackberr/i],
  ['200 g sultanas', 'sultanas', /\braisins?\b/i],
] as const

describe('a kind is called what its maker calls it', () => {
  it.each(KINDS)('%s', async (of, name, entry) => {
    const desk = jarDesk('2026-09-05', { ...newAsker(), talk: newTalkMemory() })
    const said = [
      await desk.textOf(`/plan of:${of} spirit:1 l gin 50%`),
      await desk.textOf('shopping list'),
      await desk.textOf(`/jar start of:${of} spirit:1 l gin 50%`),
      await desk.textOf('/jar list'),
      await desk.textOf(`/jar show ${name}`),
    ]
    for (const text of said) expect(text).toMatch(new RegExp(name, 'i'))
    // What was weighed by the entry’s own name stands in none of them, but for lines to type.
    for (const text of said)
      expect(
        text
          .split('\n')
          .filter((line) => !line.includes('/'))
          .join('\n'),
      ).not.toMatch(entry)
  })

  it('is no part, state or spelling of the plant', () => {
    const none = ['lemons', 'lemon zest', 'basil leaves', 'vanilla pods', 'star anise', 'plums']
    const kinds = none.filter((name) =>
      catalogue.some((plant) => plant.names.en.includes(name) && kindTyped(plant, name) !== null),
    )
    expect(kinds).toEqual([])
  })

  it('stays what it is where both are there, and of a spirit', async () => {
    const desk = jarDesk('2026-09-05')
    expect(await desk.textOf('/plan of:1 kg damsons spirit:1 l plum brandy 50%')).toContain('plum brandy')
    await desk.ask('/jar start one of:1 kg damsons spirit:1 l gin 50%')
    await desk.ask('/jar start other of:1 kg plums spirit:1 l gin 50%')
    expect(await desk.textOf('/shopping one + other')).not.toMatch(/damsons/)
  })
})

describe('damsons, not plums', () => {
  it.each(['damsons not plums', 'they’re damsons, not plums', 'damsons instead of plums'])(
    '%s keeps how much',
    async (said) => {
      const desk = jarDesk('2026-09-05', { ...newAsker(), talk: newTalkMemory() })
      await desk.textOf('1 kg plums and a litre of gin')
      expect(await desk.textOf(said)).toContain('read as /plan of:1 kg damsons spirit:1 litre gin 40%')
    },
  )
})
