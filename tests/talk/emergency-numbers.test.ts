import { describe, expect, it } from 'vitest'
import { contacts } from '../../bot/talk/emergency/contacts.ts'
import { firstAidSteps, stepsFor, stepsForAid } from '../../bot/talk/emergency/first-aid.ts'

describe('the numbers', () => {
  it('are text, of two-letter countries, each once, with a source and the day it was checked', () => {
    expect(new Set(contacts.map(({ country }) => country)).size).toBe(41)
    for (const { country, emergency, poisonCentre, evidence, checkedOn, sources } of contacts) {
      expect(country).toMatch(/^[A-Z]{2}$/)
      expect(emergency).toMatch(/^\d{3}$/)
      expect(checkedOn).toMatch(/^\d{4}-\d{2}-\d{2}$/)
      expect(sources.length).toBeGreaterThan(0)
      expect(evidence === null).toBe(poisonCentre === null)
      if (poisonCentre !== null) expect(poisonCentre.hours).toMatch(/^(?:24 h|\d\d:00-\d\d:00)$/)
    }
  })

  // As their own pages print them, read as stored copies: the sources stand in contacts.ts.
  it.each([
    ['AT', '01 406 43 43'],
    ['DE', '06131 19240'],
    ['FR', '01 40 05 48 48'],
    ['IT', '06 305 4343'],
    ['NZ', '0800 764 766'],
    ['US', '1-800-222-1222'],
  ])('of %s is %s', (country, number) => {
    expect(contacts.find((each) => each.country === country)?.poisonCentre?.number).toBe(number)
  })

  it('stand behind steps that each have a source', () => {
    for (const { source } of Object.values(firstAidSteps)) expect(source).not.toBe('')
    expect(new Set([stepsFor, stepsForAid].flatMap((each) => Object.values(each).flat()))).toEqual(
      new Set(Object.keys(firstAidSteps)),
    )
  })
})
