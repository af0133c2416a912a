import { describe, expect, it } from 'vitest'
import { testDesk } from '../../bot/test-desk.ts'
import { talkerFor } from './told.ts'

const said = async (text: string) => (await talkerFor({ after: null, shelf: 'fair' })).say(text)

describe('the alcohol in a glass of a jar', () => {
  it.each([
    ['how many units in a 25ml glass of the raspberry?', '25 ml'],
    ['how many units in a 50 ml shot of raspberry', '50 ml'],
    ['how much alcohol is in 40 ml of the raspberry?', '40 ml'],
    ['quante unità in un bicchierino da 40 ml di lampone', '40 ml'],
  ])('%s', async (text, pour) => {
    const { call } = await said(text)
    const shown = await said('/jar show raspberry')
    expect(call).toMatchObject({ path: 'serving', options: { pour } })
    expect(call?.options.strength).toBe(`${Math.round(shown.data.abvPercent as number)}%`)
  })

  it('takes the usual glass where none is told', async () => {
    const { code, call } = await said('how much alcohol is in a glass of the raspberry?')
    expect({ code, pour: call?.options.pour }).toEqual({ code: null, pour: '40 ml' })
  })

  it('goes by the strength that is said', async () => {
    expect((await said('how many units in 25 ml of raspberry at 30%')).call?.options.strength).toBe('30%')
  })
})

// Europe/London is the United Kingdom's and Europe/Rome Italy's by the IANA table of zones, zone1970.tab; 8 g and 12 g of alcohol by
// the catalogue of countries.
describe('whose drinks are counted where nobody said', () => {
  it.each([
    ['London', '1.5 units in the United Kingdom'],
    ['Rome', 'one standard drink in Italy'],
  ])('%s', async (zone, says) => {
    const desk = testDesk({ width: 200 })
    await desk.textOf(`/settings zone:${zone}`)
    const text = await desk.textOf('/serving pour:50 ml strength:30%')
    expect(text).toContain(says)
    expect(text).toContain('by your time zone')
  })

  it('is what was said, where it was', async () => {
    const desk = testDesk({ width: 200 })
    await desk.textOf('/settings zone:London country:Italy')
    const text = await desk.textOf('/serving pour:50 ml strength:30%')
    expect(text).toContain('in Italy')
    expect(text).not.toContain('by your time zone')
  })
})
