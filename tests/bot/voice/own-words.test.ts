import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { emergencyReply } from '../../../bot/chat/emergency-reply.ts'
import { AMERICAN_WORDS, inAmerican } from '../../../bot/text/en/american.ts'
import { en } from '../../../bot/text/en/index.ts'
import { inOwnKitchen } from '../../../bot/text/own-kitchen.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'
import { newAsker } from '../asker.ts'
import { commands, testDesk } from '../test-desk.ts'

const FOLDER = join(import.meta.dirname, '..', '..', '..', 'bot', 'text', 'en')

/** Words of the one kitchen that mean something else, or the same, in the other as well. */
const IN_BOTH: ReadonlySet<string> = new Set([
  'seeds',
  'the trash',
  'throw it out',
  'throw them out',
  'beet',
  'molasses',
])

const anyOf = (words: readonly string[]): RegExp => new RegExp(`\\b(?:${words.join('|')})\\b`, 'gi')

const OURS = anyOf([
  ...AMERICAN_WORDS.map(([word]) => word),
  ...[
    'colour\\w*',
    'flavour\\w*',
    'vapour\\w*',
    'mould\\w*',
    'sulph\\w*',
    '\\w+ised?',
    '\\d+ (?:December|Dec|January|Jan)',
  ],
])

const AMERICAN = anyOf([
  ...AMERICAN_WORDS.map(([, word]) => word).filter((word) => !IN_BOTH.has(word)),
  ...['color\\w*', 'flavor\\w*', 'vapor', 'mold\\w*', 'sulf\\w*', '(?:December|Dec|January|Jan) \\d+'],
])

/** Of these no kitchen is told otherwise. */
const FINE =
  /^(?:raised?|promised?|advised?|exercised?|rised?|wised?|otherwise|likewise|precise|noise|raise|rise|praise|surprised?|bruised?)$/i

const foundIn = (text: string, words: RegExp): readonly string[] =>
  [...text.matchAll(words)].map(([word]) => word).filter((word) => !FINE.test(word))

/** A season of cherries, from a plan to trouble, in the measures of either kitchen. */
const season = (spirit: string, fruit: string): readonly string[] => [
  `/plan of:${fruit} cherries spirit:${spirit}`,
  `/plan of:${fruit} peaches spirit:${spirit}`,
  `/jar start cherry of:${fruit} cherries spirit:${spirit} when:2026-10-01`,
  '/jar list',
  '/jar show cherry',
  '/trouble mould jar:cherry',
  '/trouble turned brown jar:cherry',
  '/trouble too sweet jar:cherry',
  '/keeping cherry',
  '/jar strain cherry',
  '/jar list',
  '/jar tag cherry',
]

const screensOf = async (lines: readonly string[]): Promise<readonly string[]> => {
  const desk = testDesk({ nowMs: Date.UTC(2026, 10, 30, 9), asker: newAsker() })
  const screens: string[] = []
  for (const line of lines) screens.push(await desk.textOf(line))
  // What is to be typed is typed alike everywhere.
  return screens.map((screen) => screen.replaceAll(/(?:^|\s)\/[a-z].*$/gm, ''))
}

describe('each kitchen is told its own words', () => {
  it('that pours in cups', async () => {
    const screens = await screensOf(season('1 handle 120 proof', '1 lb'))
    expect(screens.flatMap((screen) => foundIn(screen, OURS))).toEqual([])
    const all = screens.join('\n')
    for (const word of ['pits', 'mold', 'Dec ']) expect(all).toContain(word)
  })

  it('that weighs in grams', async () => {
    const screens = await screensOf(season('1.75 l 60%', '500 g'))
    expect(screens.flatMap((screen) => foundIn(screen, AMERICAN))).toEqual([])
    const all = screens.join('\n')
    for (const word of ['stones', 'mould', ' Dec']) expect(all).toContain(word)
  })

  it('on the pages of help too', async () => {
    const pages = commands.flatMap(({ path }) => [`/help ${path}`, `/help ${path} all`])
    const screens = await screensOf(['/jar start plum of:2 lb plums spirit:1 quart 80 proof', '/help all', ...pages])
    expect(screens.flatMap((screen) => foundIn(screen, OURS))).toEqual([])
    expect(screens.join('\n')).toContain('December 24')
  })

  it('in an emergency by the country that a zone or chosen units tell', () => {
    const told = (zone: string, units: 'us' | 'metric', country: string | null = null) =>
      emergencyReply('swallowed_spirit_child', { country, zone, units })
    const said = (reply: ReturnType<typeof emergencyReply>) =>
      inOwnKitchen(wordsOf(en), en).say<'rows'>(
        { group: 'rows', key: 'emergency_poison_centre', values: undefined },
        reply.kitchen,
      )
    expect(said(told('America/Chicago', 'metric'))).toBe('Poison control center')
    expect(said(told('Etc/UTC', 'us'))).toBe('Poison control center')
    expect(said(told('Europe/Dublin', 'us'))).toBe('Poison centre')
    expect(said(told('America/Chicago', 'us', 'CA'))).toBe('Poison centre')
  })

  it('and scripts are told the same in both', async () => {
    const desk = testDesk({ nowMs: 0 })
    const { cautions } = await desk.jsonOf('/plan of:2 lb cherries spirit:1 fifth 80 proof')
    expect(JSON.stringify(cautions)).toContain('stones')
  })

  it('and what we write is British', () => {
    const files = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' }).filter(
      (name) => name.endsWith('.ts') && !name.endsWith('american.ts'),
    )
    const texts = files.map((name) =>
      readFileSync(join(FOLDER, name), 'utf8')
        .replaceAll(/\/\*[\s\S]*?\*\//g, '')
        .replaceAll(/\basked: \[[^\]]*\]/g, ''),
    )
    const sentences = texts.flatMap((text) =>
      [...text.matchAll(/'[^'\n]* [^'\n]*'|`[^`]* [^`]*`/g)].map(([said]) => said),
    )
    expect(sentences.length).toBeGreaterThan(2000)
    expect(
      sentences.flatMap((said) =>
        foundIn(
          said,
          /\b(?:faucet|countertop|plastic wrap|cheesecloth|colors?|flavors?|molds?|moldy|liters?|gasoline)\b/g,
        ),
      ),
    ).toEqual([])
  })
})

describe('a text in American words', () => {
  it.each([
    ['Keep it away from the hob and any flame.', 'Keep it away from the stove and any flame.'],
    ['Don’t crack the stones (cyanide).', 'Don’t crack the pits (cyanide).'],
    ['Leaves of stone fruit are poisonous.', 'Leaves of stone fruit are poisonous.'],
    ['Wash, halve and stone them.', 'Wash, halve and pit them.'],
    ['Stone them, or leave them whole.', 'Pit them, or leave them whole.'],
    ['Stone fruit likes it.', 'Stone fruit likes it.'],
    ['Cling film keeps the colour.', 'Plastic wrap keeps the color.'],
    ['Rinse it under the tap, with tap water.', 'Rinse it under the faucet, with tap water.'],
    ['at 24\u00a0%', 'at 24%'],
    ['on 9 December', 'on December 9'],
    ['on Monday 30 November 2026.', 'on Monday, November 30, 2026.'],
    ['14 to 30 Dec: about 4 cups', 'Dec 14 to 30: about 4 cups'],
    ['from 9 to 29 Jan 2027.', 'from Jan 9 to 29, 2027.'],
    ['30 Dec to 29 Jan', 'Dec 30 to Jan 29'],
    ['in early December 2026', 'in early December 2026'],
    ['Sterilised, unlabelled, mouldy.', 'Sterilized, unlabeled, moldy.'],
    ['You may raise it.', 'You may raise it.'],
  ])('%s', (text, told) => {
    expect(inAmerican(text, [])).toBe(told)
  })

  it('leaves alone what somebody named, and what is to be typed', () => {
    const text = 'My colour jar has lost its colour. Type: /jar note My colour jar note:9 December'
    expect(inAmerican(text, ['My colour jar'])).toBe(
      'My colour jar has lost its color. Type: /jar note My colour jar note:9 December',
    )
  })
})
