import { describe, expect, it, test } from 'vitest'
import { emergencyReply } from '../../bot/chat/emergency-reply.ts'
import { contacts } from '../../bot/talk/emergency/contacts.ts'
import { stepsFor } from '../../bot/talk/emergency/first-aid.ts'
import { HARMS } from '../../bot/talk/emergency/harm.ts'
import { NOBODY } from '../../store/person.ts'
import { StorageError } from '../../store/storage-error.ts'
import { newAsker } from '../bot/asker.ts'
import { testDesk } from '../bot/test-desk.ts'

/** Somebody of a country; nobody may change anything. */
const deskOf = (country: string | null, width = 80) => {
  const asker = newAsker()
  const refuse = () => Promise.reject(new Error('nothing is to be recorded'))
  const read = async () => ({ ...NOBODY, settings: { ...NOBODY.settings, country } })
  return testDesk({ width, asker: { ...asker, store: { ...asker.store, read, update: refuse } } })
}

const linesOf = async (country: string | null, line: string) => (await deskOf(country).textOf(line)).split('\n')

describe('the answer where somebody was harmed', () => {
  it('says the emergency number first, then the poison centre with its hours, then four steps', async () => {
    const lines = await linesOf('IE', 'my son drank from the jar')
    expect(lines.slice(0, 2).join(' ')).toBe(
      'Call 112 if they’re drowsy, having a fit, breathing badly or won’t wake up. If not, call the poison centre now.',
    )
    expect(lines[3]).toMatch(/^ {2}Poison centre {2}01 809 2166, 8:00 to 22:00 every day/)
    expect(lines.filter((line) => /^ {2}\d /.test(line))).toHaveLength(4)
  })

  it('asks for the country where nobody has said, with a line to type that runs', async () => {
    const lines = await linesOf(null, 'my son drank from the jar')
    expect(lines[0]).toBe('Call your emergency number (112 in the EU) now and ask for the poison centre.')
    const line = /\/settings country:\w\w/.exec(lines.find((each) => each.includes('/settings')) ?? '')?.[0]
    expect(line).toBe('/settings country:IE')
    const text = await testDesk({ width: 80 }).textOf(line!)
    expect(text).toMatch(/^ +Emergency +112\b.*01 809 2166, 8:00 to 22:00 every day/m)
  })

  it('is offered beside what reads like a sentence and is no command, not beside a slip', async () => {
    const desk = testDesk()
    const hurt = /If somebody’s hurt, type: emergency$/
    for (const line of ['wot about th lemmon thing', 'my frend went al funy and']) {
      expect((await desk.textOf(line)).replaceAll('\n', ' ')).toMatch(hurt)
    }
    expect(await desk.textOf('/plam of:10 lemons spirit:1 l')).not.toMatch(hurt)
    expect(await desk.textOf('plam')).not.toMatch(hurt)
    expect(await desk.textOf('emergency')).toMatch(/^Call your emergency number/)
  })

  it.each<[country: string, line: string, says: readonly string[]]>([
    ['GB', 'my son drank it', ['Call 999 if', 'If not  Call NHS 111']],
    ['AU', 'he wont wake up', ['Call 000 now', '13 11 26, day and night']],
    ['CH', 'he wont wake up', ['Call 112 or 144 now', 'If nobody answers, call 144.']],
    ['NO', 'the kitchen is on fire', ['call 110 or 113 now']],
    ['NO', 'i want to kill myself', ['Call 113 now', 'Taken something?  22 59 13 00']],
    ['AR', 'he wont wake up', ['Call 911 or 107 now']],
    ['RO', 'my son drank it', ['021 210 62 82', 'for children only']],
    ['TR', 'my son drank it', ['your emergency number (112 from many mobiles)', 'I have no number for one.']],
    ['IT', 'il cane ha bevuto il liquore', ['Call your vet now, or the poison centre: 06 305 4343']],
    ['US', 'my dog drank it', ['Call your vet now.', 'Person hurt?  Call 911.']],
  ])('in %s, to “%s”', async (country, line, says) => {
    const text = (await deskOf(country, 200).textOf(line)).replaceAll('\n', ' ')
    for (const said of says) expect(text).toContain(said)
  })

  it.each(['my dog ate the strained sloes', 'the cat drank my limoncello', 'il cane ha mangiato le prugne spiritate'])(
    'says the vet first, and the number for people after: %s',
    async (line) => {
      const lines = await linesOf(null, line)
      expect(lines[0]).toBe('Call your vet now.')
      expect(lines.slice(1).join(' ')).toContain('Call your emergency number')
    },
  )

  // NVIC of the Netherlands and the Slovenian centre take professionals only; those of Cyprus and India are not confirmed.
  it.each(['NL', 'SI', 'CY', 'IN', 'MX', 'GB'])('shows no poison number in %s', async (country) => {
    const { data } = await deskOf(country).jsonOf('my son drank it')
    expect(data.poisonCentre).toBeNull()
    expect(await deskOf(country, 200).textOf('my son drank it')).not.toMatch(
      /1401|1800 116 117|755 8000|400 6039|009 2800/,
    )
  })

  it('offers a centre for children to no grown person', async () => {
    expect((await deskOf('RO').jsonOf('my husband drank the pure alcohol by mistake')).data.poisonCentre).toBeNull()
  })

  it.each([
    ['burnt my hand on the syrup', /^Cool it under running water now/],
    ['spirit in my eye', /^Rinse the eye with water now/],
    ['my sleeve is on fire', /^Down on the floor and roll/],
  ])('begins with what to do at once where that comes before any call: %s', async (line, first) => {
    expect(await deskOf('IE').textOf(line)).toMatch(first)
  })

  it('asks nothing before what puts out a fire, cools a burn or stops blood', async () => {
    for (const line of ['the kitchen is on fire', 'burnt my hand on the syrup', 'a bottle burst and cut my hand']) {
      const text = await deskOf(null).textOf(line)
      expect(text.indexOf('/settings'), line).toBeGreaterThan(text.search(/^ {2}4 /m))
      expect(await deskOf('IE').textOf(line), line).not.toContain('01 809 2166')
    }
  })

  it('is a success with what scripts need', async () => {
    const { command, data, notes, cautions } = await deskOf('IE').jsonOf('/plan of:my toddler drank it')
    expect(command).toBe('emergency')
    expect(data).toEqual({
      id: 'swallowed_spirit_child',
      country: 'IE',
      emergency: '112',
      ambulance: null,
      fire: null,
      poisonCentre: {
        number: '01 809 2166',
        name: 'National Poisons Information Centre, public line',
        hours: '08:00-22:00',
      },
      vet: false,
      asked: [],
      steps: ['no_waiting', 'no_vomiting', 'nothing_by_mouth', 'have_ready_child'],
    })
    expect(notes.map(({ key }: { key: string }) => key)).toEqual(['emergency_nothing_done'])
    expect(cautions).toEqual([])
  })

  it.each([
    'help my son drank it',
    '/help my kid drank the spirit',
    'my husband passed out "',
    '/jar note lemon the dog ate the peel',
  ])('comes before help, commands, options and quotes: %s', async (line) => {
    expect((await deskOf('IE').jsonOf(line)).command).toBe('emergency')
  })

  it('comes to an invocation too', async () => {
    const options = { jar: 'lemon', note: 'my cat drank it' }
    expect(await deskOf('IE').run({ path: 'jar note', options })).toMatchObject({ ok: true, path: 'emergency' })
  })

  it.each([new StorageError('closed', {}), new TypeError('any fault')])(
    'comes where the store fails: %s',
    async (fault) => {
      const asker = newAsker()
      const read = () => Promise.reject(fault)
      const { data } = await testDesk({ asker: { ...asker, store: { ...asker.store, read } } }).jsonOf(
        'he wont wake up',
      )
      expect(data).toMatchObject({ id: 'unconscious_after_drinking', country: null, emergency: '112' })
    },
  )

  it('leaves help, plans and mistakes alone', async () => {
    const desk = testDesk()
    expect((await desk.jsonOf('/help')).command).toBe('help')
    expect((await desk.jsonOf('/mix spirit:1 l strength:95%')).command).toBe('mix')
    expect((await desk.jsonOf('it kills me how bitter this is')).command).toBe('trouble')
  })

  test.each(HARMS)('%s has at most four steps, on any width, with no word that is missing', async (harm) => {
    expect(stepsFor[harm].length).toBeLessThanOrEqual(4)
    for (const country of [null, 'TR', ...contacts.map((contact) => contact.country)]) {
      const { headline, table, actions } = emergencyReply(harm, { country, zone: 'Europe/Rome' })
      expect(headline.key).toBe('emergency')
      expect(table.length).toBeLessThanOrEqual(harm === 'pet' ? 6 : 5)
      expect(actions).toEqual([])
    }
  })
})
