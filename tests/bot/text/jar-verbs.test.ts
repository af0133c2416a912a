import { describe, expect, it } from 'vitest'
import { hasHave, isAre, isnt, wasnt, wasWere } from '../../../bot/text/en/jar-verbs.ts'
import { jarDesk } from '../commands-jar/desk.ts'

describe('the verb of a jar', () => {
  it.each([
    ['sloes', 'are'],
    ['basil leaves', 'are'],
    ['plums 2', 'are'],
    ['coffee beans', 'are'],
    ['lemon', 'is'],
    ['lemon peel', 'is'],
    ['hibiscus', 'is'],
    // Of no plant, so nobody can tell.
    ['James', 'is'],
    ['for the neighbours', 'is'],
  ])('of one called %s: %s', (name, verb) => {
    expect(isAre(name)).toBe(verb)
    expect([isnt(name), hasHave(name), wasWere(name), wasnt(name)]).toEqual(
      verb === 'are' ? ['aren’t', 'have', 'were', 'weren’t'] : ['isn’t', 'has', 'was', 'wasn’t'],
    )
  })

  it('of several jars is that of several', () => {
    expect([isAre(['lemon', 'plum']), hasHave(['lemon', 'plum']), isAre(['lemon'])]).toEqual(['are', 'have', 'is'])
  })

  it('goes with the name that a jar is given', async () => {
    const desk = jarDesk('2026-10-01')
    expect(await desk.textOf('/jar start of:500 g sloes spirit:700 ml 40%')).toContain('named it sloes')
    expect(await desk.textOf('/jar shake sloes')).toMatch(/^Sloes are shaken\./)
    expect(await desk.textOf('/jar show sloes')).toMatch(/\nThey’re steeping,/)
    expect(await desk.textOf('/jar bottle sloes 2 x 300 ml')).toContain('Sloes are still steeping. Strain them first:')
  })
})
