import { afterEach, describe, expect, test } from 'vitest'
import { shareRef } from '../../bot/calls/share-ref.ts'
import { commands } from '../../bot/commands/index.ts'
import { newAsker } from './asker.ts'
import { jarDesk } from './commands-jar/desk.ts'

const WORD = 'zorble'

/** Texts in which any word may stand, each with why. */
const FREE: Readonly<Record<string, string>> = {
  'jar start name': 'what its maker calls a jar',
  'again name': 'what its maker calls a jar',
  'jar rename to': 'what its maker calls a jar',
  'jar taste note': 'what its maker notes',
  'jar correct note': 'what its maker notes',
  'trouble about': 'what its maker would do with it',
  'trouble given': 'who has some of it',
  'jar note note': 'what its maker notes',
  'jar note was': 'what a trouble turned out to be, in its maker’s words',
  'jar note where': 'where it stands, in its maker’s words',
  'jar note vessel': 'what it is in, in its maker’s words',
  'jar label by': 'who made it, in their own words',
  'jar start enzyme': 'how much enzyme, in its maker’s words',
  'jar add enzyme': 'how much enzyme, in its maker’s words',
  'jar split into': 'what its maker calls a jar',
  'jar combine into': 'what its maker calls a jar',
  'notebook import': 'the path of a file',
}

/** A person in Discord, who alone can share. */
const OWNER = '123456789012345678'

const CODE = '11M4QTHJ0001MYJ0JNHC00VV9QPCBAHF5DGB80V3'

/** A line with every option of a command, at least once among these; what is right for each. */
const LINES: Readonly<Record<string, readonly string[]>> = {
  bottles: ['jar:sweet|given:1|when:today|already:yes', 'jar:sweet|opened:1'],
  shopping: [`jars:fresh + sweet|plans:${CODE}|have:500 g sugar|bottles:4 x 500 ml|spirit-size:700 ml`],
  cost: [
    'jar:sweet|prices:lemons 4/kg + spirit 95% 18/l',
    'plan:11NCHSTJ8P501JQH0JNHC00VV9QPCFH0HFWJ262TYX|bottles:4 x 500 ml',
  ],
  keeping: ['jar:sweet', 'of:lemon|strength:30%|sweetness:200 g/L'],
  trouble: [
    'symptom:cloudy|jar:sweet|yes:bought|no:growth|what-if:yes',
    'symptom:mould|jar:sweet|about:cooking|given:Ann',
    'symptom:too sweet|of:lemon|strength:30%|sweetness:200 g/L|days:3 weeks',
  ],
  plan: [
    'of:10 lemons|spirit:1 l|strength:95%|have:500 g sugar',
    'of:10 lemons|spirit:1 l 95%|to-strength:30%|to-sweetness:250 g/L|start:today|steep-at:70%|sugar:100 g|water:apple juice|bottles:4 x 500 ml',
    'of:10 lemons|spirit:1 l|strength:95%|ready-by:1 May',
    'of:10 lemons|spirit:1 l 95%|sugar:500 g|water:1 l',
    'of:10 lemons|spirit:1 l 95%|unknown-ok:yes|days:14 days|all-in:yes',
    `from:${CODE}`,
  ],
  syrup: [
    'infusion:920 ml|strength:90%|to-strength:30%|to-sweetness:250 g/L|at-most:2 l|sugar:honey|water:apple juice',
    'infusion:920 ml|of:8 lemons|spirit:1 l 95%|ratio:1:1',
    'jar:strained',
  ],
  mix: ['spirit:1 l|strength:95%|water:750 ml|sugar:500 g|freezer:-20 C'],
  dilute: ['spirit:1 l|strength:95%|to-strength:40%'],
  blend: ['parts:600 ml 47% 250 g/L + 300 ml 33% dry|freezer:-20 C'],
  adjust: [
    'liqueur:1.8 l|strength:33%|sweetness:300 g/L|to-strength:30%|to-sweetness:250 g/L|spirit-strength:95%|sugar:honey',
    'jar:sweet|glass:50 ml|glass-spirit:5 ml 40%|glass-water:3 ml|glass-sugar:4 g',
  ],
  measure: [
    'brix:26.5|hydrometer:1.035',
    'before:1.021|after:1.094',
    'hydrometer:1.035|sweetness:180 g/L',
    'jar:sweet|hydrometer:1.058|when:today',
    'jar:strained|strength:82%|sweetness:10 g/L|when:today',
  ],
  serving: ['pour:40 ml|strength:40%|country:Italy'],
  label: ['strength:30%|sweetness:250 g/L|of:10 lemons|region:EU|sugar:honey'],
  botanical: ['of:lemon|spirit:70 cl gin', 'month:October'],
  cautions: ['of:lemon + ginger'],
  settings: ['units:metric|country:Italy|zone:Europe/Rome|freezer:-22 C'],
  reminders: ['place:here|time:9|zone:Europe/Rome|shake:daily|drink:no', 'pause-until:1 May'],
  'jar list': ['picture:no'],
  'jar start': [
    'of:10 lemons|spirit:1 l 95%|to-strength:30%|to-sweetness:250 g/L|when:today|steep-at:70%|sugar:100 g|bottles:4 x 500 ml',
    'of:10 lemons|spirit:1 l|strength:95%|ready-by:1 May',
    'of:10 lemons|spirit:1 l 95%|unknown-ok:yes|days:14 days|water:apple juice|all-in:yes',
    'second-of:strained|spirit:1 l 95%',
    `from:${CODE}`,
  ],
  'jar shake': ['jar:fresh|when:today'],
  'jar taste': ['jar:fresh|rating:4|when:today'],
  'jar add': [
    'jar:fresh|of:10 g ginger|spirit:100 ml|strength:95%|water:10 ml|sugar:10 g|unknown-ok:yes|already:yes|when:today|after:1',
    'jar:fresh|of:10 g ginger|as:layer',
  ],
  'jar strain': ['jar:fresh|measured:920 ml|strength:85%|rinse:10 ml|when:today'],
  'jar sweeten': [
    'jar:strained|water:1.5 l|sugar:500 g|when:today|after:2|again:yes',
    'jar:strained|sugar:100 g|on-fruit:yes',
    'jar:sugared|from-fruit:100 ml',
  ],
  'jar filter': ['jar:sweet|measured:2 l|when:today|again:yes', 'jar:sweet|racked:yes|fining:bentonite'],
  'jar bottle': ['jar:sweet|bottles:4 x 500 ml|already:yes|when:today'],
  'jar open': ['jar:sweet|when:today'],
  'jar empty': ['jar:sweet|when:today'],
  'jar discard': ['jar:sweet|when:today'],
  'jar rename': ['jar:fresh'],
  'jar take-out': ['jar:fresh|of:lemon|when:today'],
  'jar split': ['jar:sweet|amount:500 ml|into:half|when:today'],
  'jar combine': ['jar:sweet|with:strained|amount:500 ml|with-amount:500 ml|into:both|when:today'],
  'jar note': ['jar:fresh|where:cellar|vessel:demijohn|when:today'],
  'jar later': ['jar:fresh|until:1 May'],
  'jar correct': [
    'jar:fresh|entry:1|of:10 lemons|spirit:1 l|strength:90%|sugar:100 g|unknown-ok:yes|already:yes|when:today',
    'jar:strained|measured:930 ml|rinse:10 ml',
    'jar:sweet|water:1.5 l',
    'jar:fresh|rating:4',
    'jar:sweet|bottles:4 x 500 ml',
  ],
  'jar undo': ['jar:fresh|after:1'],
  'jar show': ['jar:fresh|ready-by:1 May'],
  'jar tag': ['jar:fresh'],
  'jar label': ['jar:sweet|by:the society|already:yes'],
  notebook: ['compare:fresh + sweet', 'export:csv'],
  calendar: ['jar:fresh'],
  share: [
    'jar:fresh',
    'withdraw:all',
    'make:REF|of:10 lemons|spirit:1 l|strength:95%|bottles:4 x 500 ml|to-strength:30%',
  ],
  again: [
    'jar:fresh|spirit:1 l|strength:95%|to-strength:30%|to-sweetness:250 g/L|sugar:honey|water:apple juice|days:10|bottles:4 x 500 ml',
    'jar:fresh|of:12 lemons',
  ],
  forget: ['jar:fresh|confirm:no'],
}

const lineOf = (path: string, options: readonly string[]): string => `/${path} ${options.join(' ')}`

const nameOf = (option: string): string => option.slice(0, option.indexOf(':'))

const has = (path: string, option: string): boolean =>
  commands.some((command) => command.path === path && Object.hasOwn(command.input.shape, option))

const CASES = Object.entries(LINES).flatMap(([path, lines]) =>
  lines.flatMap((line) => {
    const options = line.split('|').filter((each) => has(path, nameOf(each)))
    return options.flatMap((option, at): readonly (readonly [string, string])[] => {
      const name = nameOf(option)
      if (`${path} ${name}` in FREE) return []
      return [
        [
          `${path} ${name}`,
          lineOf(
            path,
            options.map((each, place) => (place === at ? `${each} ${WORD}` : each)),
          ),
        ],
      ]
    })
  }),
)

const deskWithJars = async () => {
  const asker = { ...newAsker(), userId: OWNER }
  const desk = jarDesk('2026-11-01', asker)
  await desk.ask('/jar start fresh of:10 lemons spirit:1 l 95%')
  await desk.ask('/jar start strained of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L')
  await desk.ask('/jar strain strained measured:920 ml')
  await desk.ask('/jar start sweet of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L')
  await desk.ask('/jar strain sweet measured:920 ml')
  await desk.ask('/jar sweeten sweet water:1.5 l sugar:500 g')
  await desk.ask('/jar start sugared of:10 lemons spirit:1 l 95%')
  await desk.ask('/jar strain sugared measured:900 ml')
  await desk.ask('/jar sweeten sugared sugar:100 g on-fruit:yes')
  const { data } = await desk.ask('/share fresh')
  const kept = async (): Promise<string> => JSON.stringify(await asker.store.read(OWNER))
  return { desk, ref: shareRef({ owner: OWNER, shareId: String(data.share) })!, kept, first: await kept() }
}

test('every option of every command is tried, or is a free text', () => {
  const all = commands.flatMap(({ path, input: { shape } }) => Object.keys(shape).map((option) => `${path} ${option}`))
  const tried = new Set([...CASES.map(([option]) => option), ...Object.keys(FREE)])
  expect(all.filter((option) => !tried.has(option))).toEqual([])
})

describe('a word that means nothing is said back', async () => {
  let stage = await deskWithJars()
  afterEach(async () => {
    if ((await stage.kept()) !== stage.first) stage = await deskWithJars()
  })
  test.each(CASES)('%s: %s', async (_, line) => {
    const { desk, ref } = stage
    // Refused, or taken as what it names: a plant that its maker answers for, a country I know nothing of.
    expect(await desk.textOf(line.replace('REF', ref))).toContain(WORD)
  })
})
