import { expect, it } from 'vitest'
import { newAsker } from '../asker.ts'
import { speech, testDesk } from '../test-desk.ts'

const START_MS = Date.UTC(2026, 8, 1, 9)
const DAY_MS = 86_400_000

const years = () => {
  const asker = newAsker()
  return (day: number) => testDesk({ nowMs: START_MS + day * DAY_MS, asker })
}

/** What stands on the label of a jar, in words. */
async function labelOf(desk: ReturnType<typeof testDesk>, jar: string): Promise<string> {
  const outcome = await desk.run(`/jar label ${jar}`)
  if (!outcome.ok || !('reply' in outcome)) throw new Error('no label')
  const { files = [], kitchen } = outcome.reply
  return files.map(({ alt }) => speech.words.say<'files'>(alt, kitchen).replaceAll('\u00a0', ' ')).join('\n')
}

it('says gin on the label where gin went in, and spirit where nobody said', async () => {
  const at = years()
  await at(0).run('/jar start sloe of:500 g sloes spirit:70 cl gin 40% sugar:200 g')
  await at(0).run('/jar start lemon of:10 lemons spirit:1 l 95%')
  expect(await labelOf(at(1), 'sloe')).toMatch(/Gin, .*sloes/)
  expect(await labelOf(at(1), 'sloe')).not.toContain('Spirit')
  expect(await labelOf(at(1), 'lemon')).toContain('Spirit, ')
})

it('says on the label what is in an infusion that nothing more goes into', async () => {
  const at = years()
  await at(0).run('/jar start bitter of:5 g gentian spirit:500 ml 45% to-strength:44.5% to-sweetness:0 g/L')
  expect(await labelOf(at(1), 'bitter')).toContain('(planned)')
  await at(20).run('/jar strain bitter measured:470 ml')
  expect(await labelOf(at(20), 'bitter')).not.toContain('planned')
  await at(0).run('/jar start lemon of:10 lemons spirit:1 l 95%')
  await at(20).run('/jar strain lemon')
  expect(await labelOf(at(20), 'lemon')).toContain('(planned)')
})

it.each([
  ['1 kg damsons', 'damsons'],
  ['1 kg mirabelles', 'mirabelles'],
  ['300 g bilberries', 'bilberries'],
])('tells %s as those', async (of, said) => {
  const at = years()
  const plan = await at(0).textOf(`/plan of:${of} spirit:1 l 60%`)
  expect(plan).toContain(`Buy ${of.replace(' kg', ' kg')}`)
  expect(plan).toContain(`Put the ${said} and`)
  const begun = await at(0).textOf(`/jar start of:${of} spirit:1 l 60%`)
  expect(begun).toContain(`${said} is started. In the jar: ${of}`)
  expect(await at(1).textOf(`/jar show ${said}`)).toContain(of)
  expect(await labelOf(at(1), said)).toContain(said)
})

it('says plums where plums were typed', async () => {
  expect(await years()(0).textOf('/plan of:1 kg plums spirit:1 l 60%')).toContain('Put the plums and')
})

it('says of a jar that is late how many days it is over', async () => {
  const at = years()
  await at(0).run('/jar start plum of:1 kg plums spirit:1 l 60%')
  expect(await at(86).textOf('/jar show plum')).toMatch(/^plum is steeping, day 87, \d+ days over\./)
  const listed = await at(86).textOf('/jar list')
  expect(listed).toMatch(/day 87 +strain, \d+ days late/)
  expect(listed).not.toMatch(/day 87 of/)
})
