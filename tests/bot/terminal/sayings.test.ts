import { expect, it } from 'vitest'
import { printed, talkerAt } from '../offered/walk.ts'
import { testDesk } from '../test-desk.ts'

const NOW_MS = Date.parse('2026-09-05T10:00:00Z')

/** What is offered under an answer, and how what is said of it is read. */
async function saidUnder(before: readonly string[], line: string, saying: string) {
  const talker = talkerAt('console', NOW_MS)
  for (const each of before) await printed(talker, each)
  const { text } = await printed(talker, line)
  return { text, read: (await printed(talker, saying, 200)).text.split('\n')[0] }
}

const LEMON = '10 lemons and a litre of 95%'

it.each([
  [[], LEMON, 'Start this jar: start it', 'start it', '/jar start of:10 lemons spirit:1 l 95%'],
  [[], LEMON, 'Make it drier: drier', 'drier', '/plan of:10 lemons spirit:1 l 95% to-sweetness:120 g/L'],
  [[LEMON, 'start it'], 'strained it, 930 ml', 'Sweetened as planned: done', 'done', '/jar sweeten lemon sugar:'],
  [
    ['/jar start plum of:500 g plums spirit:1 l 40%'],
    'the plum went cloudy',
    'No: no',
    'no',
    '/trouble cloudy jar:plum no:',
  ],
] as const)('%j, then %s: offers “%s” in words, which is read so', async (before, line, offered, saying, read) => {
  const said = await saidUnder(before, line, saying)
  expect(said.text).toContain(offered)
  expect(said.read?.replace('1 litre', '1 l')).toContain(`read as ${read}`)
})

it('offers the line where nothing said is remembered', async () => {
  expect(await testDesk({ nowMs: NOW_MS }).firstOf(LEMON)).toContain('/jar start of:10 lemons spirit:1 litre 95%')
})
