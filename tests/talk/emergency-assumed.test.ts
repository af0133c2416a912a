import { expect, it } from 'vitest'
import { NOBODY } from '../../store/person.ts'
import { newAsker } from '../bot/asker.ts'
import { testDesk } from '../bot/test-desk.ts'

/** Somebody of whom only the settings named are known. */
const told = async (own: Partial<(typeof NOBODY)['settings']>, line: string) => {
  const asker = newAsker()
  const read = async () => ({ ...NOBODY, settings: { ...NOBODY.settings, ...own } })
  const text = await testDesk({ width: 100, asker: { ...asker, store: { ...asker.store, read } } }).textOf(line)
  return text.replaceAll(/\s+/g, ' ')
}

// The numbers of the United States as on record in the contacts, with their sources.
it.each([
  [{ zone: 'America/Denver' }, 'my daughter drank the vodka', ['911 (US assumed, 112 in the EU)', '1-800-222-1222']],
  [{ zone: 'America/Chicago' }, 'she won’t wake up', ['Call 911 (US assumed, 112 in the EU) now']],
  [{ units: 'us' as const }, 'he drank the antifreeze', ['911 (US assumed, 112 in the EU)', '1-800-222-1222']],
])('shows the numbers of the United States as assumed where %j tells them: %s', async (own, line, says) => {
  const text = await told(own, line)
  for (const each of says) expect(text).toContain(each)
  expect(text).toMatch(/\/settings country:\w\w/)
})

it.each([{ zone: 'Europe/Vienna' }, { zone: 'Europe/Rome', units: 'us' as const }, { zone: 'Asia/Ulaanbaatar' }])(
  'assumes no country for %j',
  async (own) => {
    const text = await told(own, 'my daughter drank the vodka')
    expect(text).toContain('your emergency number (112 in the EU)')
    expect(text).not.toMatch(/911|1-800/)
  },
)

// The numbers as on record in the contacts, with their sources.
it.each([
  ['Europe/London', '999 in the UK'],
  ['America/Toronto', '911 in Canada'],
  ['Australia/Sydney', '000 in Australia'],
])('names the number of the zone %s beside that of the EU, and assumes no country', async (zone, own) => {
  const text = await told({ zone }, 'my daughter drank the vodka')
  expect(text).toContain(`your emergency number (${own}, 112 in the EU)`)
  expect(text).not.toMatch(/assumed|1-800/)
})

it('says that the number beside what is thrown away is assumed', async () => {
  expect(await told({ zone: 'America/New_York' }, '/trouble smells of petrol')).toContain('1-800-222-1222 (US assumed)')
  expect(await told({ country: 'US' }, '/trouble smells of petrol')).not.toContain('assumed')
})
