import fc from 'fast-check'
import { expect, it } from 'vitest'
import { escapeText } from '../../../bot/discord/show/escape-text.ts'
import { isolated, isolatedWithin, unisolated } from '../../../bot/discord/show/isolate-rtl.ts'
import { runs, SEED } from '../../runs.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { bot, fake, onStage } from './stage.ts'

/** As they are shown: `⟨` and `⟩` for the isolates. */
const seen = (text: string): string => text.replaceAll('\u2068', '⟨').replaceAll('\u2069', '⟩')

it.each([
  ['לימון 2: 30 ml', '⟨לימון⟩ 2: 30 ml'],
  ['ליקר לימון, 3 days', '⟨ליקר לימון⟩, 3 days'],
  ['ענבים 2, לימון 3', '⟨ענבים⟩ 2, ⟨לימון⟩ 3'],
  ['می\u200cخواهم 5', '⟨می\u200cخواهم⟩ 5'],
  ['לִימוֹן', '⟨לִימוֹן⟩'],
  ['צ׳יפס 1', '⟨צ׳יפס⟩ 1'],
  ['𞤀𞤣𞤤𞤢𞤥 7', '⟨𞤀𞤣𞤤𞤢𞤥⟩ 7'],
  ['lemon 2, 柠檬 3', 'lemon 2, 柠檬 3'],
  ['٣ 5', '٣ 5'],
])('%s', (text, shown) => {
  expect(seen(isolated(text))).toBe(shown)
})

it('knows the letters of every script that is written so, and no others', () => {
  const scripts = 'Hebr Arab Syrc Thaa Nkoo Samr Mand Adlm Rohg Phnx Armi Avst Phli Prti Orkh Sarb Lydi Khar Yezi Sogd'
  const theirs = new RegExp(
    scripts
      .split(' ')
      .map((script) => `\\p{Script=${script}}`)
      .join('|'),
    'u',
  )
  const others = /[\p{Script=Latn}\p{Script=Grek}\p{Script=Cyrl}\p{Script=Hani}\p{Script=Deva}\p{Script=Thai}]/u
  const letters = Array.from({ length: 0x20000 }, (_, point) => point)
    .filter((point) => point < 0xd800 || point > 0xdfff)
    .map((point) => String.fromCodePoint(point))
    .filter((letter) => /\p{L}/u.test(letter))
  const [right, left] = [theirs, others].map((some) => letters.filter((letter) => some.test(letter)))
  expect(right!.length).toBeGreaterThan(1500)
  expect(right!.filter((letter) => isolated(letter) === letter)).toEqual([])
  expect(left!.filter((letter) => isolated(letter) !== letter)).toEqual([])
})

it('stands inside of what is escaped, and around no days', () => {
  expect(seen(escapeText('*לימון* \ufdd01796817600:D\ufdd1 לימון'))).toBe('\\*⟨לימון⟩\\* <t:1796817600:D> ⟨לימון⟩')
})

it('adds nothing but isolates, each of which is closed, and leaves out those that do not fit', () => {
  const sign = fc.constantFrom(...'לi12 -׳,\u05b4\u200dا*')
  fc.assert(
    fc.property(fc.array(sign, { maxLength: 30 }), fc.nat(60), (signs, most) => {
      const text = signs.join('')
      expect(unisolated(isolated(text))).toBe(text)
      expect(seen(isolated(text))).toMatch(/^(?:[^⟨⟩]|⟨[^⟨⟩\d]+⟩)*$/)
      expect(isolated(text).replace(/\u2068[^\u2069]*\u2069/g, '')).not.toMatch(/[לا]/)
      expect(isolatedWithin(text, most)).toBe(isolated(text).length <= most ? isolated(text) : text)
    }),
    { seed: SEED, numRuns: runs(500, 50_000) },
  )
})

onStage()

it('is in texts, on buttons, in forms and among what is offered; what is kept stays as it was typed', async () => {
  const name = 'לימון 2'
  const started = await fake.slash('jar start', { name, of: '10 lemons', spirit: '1 l 95%' })
  expect(seen(started.text)).toContain('⟨לימון⟩ 2')
  const { jars } = await bot.store.read(fake.user.id)
  expect(jars[0]!.entries[0]).toMatchObject({ name })
  const { choices } = await fake.autocomplete('jar show', { jar: '' }, 'jar')
  expect(choices.map((each) => seen(each.name))).toEqual(['⟨לימון⟩ 2'])
  const asked = await fake.slash('jar taste', { jar: name })
  expect(seen(String(asked.modal!.title))).toBe('Tasting: ⟨לימון⟩ 2')
  const two = await fake.slash('jar start', { name: 'ענבים', of: '10 lemons', spirit: '1 l 95%' })
  const list = await fake.slash('jar list')
  const labels = [two, list].flatMap(({ message }) => buttonsOf(message!.json).map(({ label }) => label))
  for (const label of labels) expect(isolated(unisolated(label))).toBe(label)
  // Copied from what is shown it still names the jar.
  expect((await fake.slash('jar shake', { jar: '\u2068לימון\u2069 2' })).text).toContain('shaken')
})
