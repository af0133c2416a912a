import type { Asker } from '../../../bot/chat/command.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { type Jar, NOBODY, type Person } from '../../../store/person.ts'
import { newAsker } from '../asker.ts'
import { entriesOf, NOW_MS, startedAs } from '../commands-jar-views/jars.ts'
import { testDesk } from '../test-desk.ts'

export { NOW_MS }

/** A jar of many kinds of entries: tasted, corrected, taken back, strained, sweetened. */
export const lemonJar = (name = 'lemon', id = 'aaaa1'): Jar => ({
  id,
  entries: entriesOf([
    {
      ...startedAs(name, {}, { tasteFrom: '2026-10-10', strainFrom: '2026-10-20', strainBy: '2026-11-01' }),
      on: '2026-10-01',
    },
    { kind: 'shaken', on: '2026-10-02', typed: [['jar', name]] },
    { kind: 'tasted', rating: 3, note: 'sharp, "fine"\nand =1+1', on: '2026-10-11' },
    { kind: 'corrected', of: 3, by: { kind: 'tasted', rating: 4, note: null }, on: '2026-10-12' },
    { kind: 'discarded', on: '2026-10-13' },
    { kind: 'undone', of: 5, on: '2026-10-13' },
    {
      kind: 'strained',
      measured: { amount: { value: 930, plusMinus: 10 }, by: 'volume', atC: 20 },
      strength: null,
      rinseWaterG: { value: 0, plusMinus: 0 },
      on: '2026-10-25',
    },
    {
      kind: 'sweetened',
      waterG: { value: 900, plusMinus: 9 },
      sweetenings: whiteSugar({ value: 600, plusMinus: 6 }),
      on: '2026-10-26',
    },
  ]),
  told: ['shake.2026-10-02'],
  cautioned: ['flame'],
})

/** Just started, with everything to come. */
export const walnutJar = (name = 'walnut', id = 'bbbb2'): Jar => ({
  id,
  entries: entriesOf([
    {
      ...startedAs(name, {}, { tasteFrom: '2026-12-10', strainFrom: '2026-12-20', strainBy: '2027-01-05' }),
      on: '2026-11-19',
    },
  ]),
  told: [],
  cautioned: [],
})

/** Somebody at the terminal who can give one file, `given`. */
export const deskOf = async (person: Partial<Person>, { nowMs = NOW_MS, userId = 'local' } = {}) => {
  let given: Uint8Array = new Uint8Array()
  const openFile: Asker['openFile'] = async () => ({ name: 'given.json', bytes: given })
  const asker = { ...newAsker(), userId, openFile }
  if (Object.keys(person).length > 0) await asker.store.update(userId, () => ({ ...NOBODY, ...person }))
  const desk = testDesk({ asker, nowMs, width: 200 })
  return {
    ...desk,
    person: () => asker.store.read(userId),
    takeIn: async (file: string | Uint8Array) => {
      given = typeof file === 'string' ? new TextEncoder().encode(file) : file
      return desk.jsonOf('/notebook import:given.json')
    },
    /** The files of a line, as text. */
    filesOf: async (line: string): Promise<readonly string[]> => {
      await desk.jsonOf(line)
      return desk.files().map(({ bytes }) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes))
    },
  }
}
