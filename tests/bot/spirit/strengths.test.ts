import { expect, test } from 'vitest'
import { newAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'

const deskWithJars = async () => {
  const desk = jarDesk('2026-11-01', newAsker())
  await desk.ask('/jar start m of:10 lemons spirit:1 l 95%')
  await desk.ask('/jar add m spirit:100 ml 95%')
  await desk.ask('/jar start s of:10 lemons spirit:1 l 95%')
  await desk.ask('/jar strain s measured:900 ml strength:80%')
  return desk
}

/** The azeotrope of ethanol and water lies at 97.2 % vol at 20 °C (from memory). */
const LINES = [
  '/plan of:100 g ginger spirit:1 l 99.8%',
  '/plan of:100 g ginger spirit:1 l 100%',
  '/plan of:100 g ginger spirit:1 l 200 proof',
  '/plan of:100 g ginger spirit:1 l vodka 97.3%',
  '/plan of:100 g ginger spirit:1 l strength:99%',
  '/plan of:lemon bottles:4 x 500 ml strength:99.9%',
  '/plan of:10 lemons spirit:1 l 95% steep-at:98%',
  '/jar start of:10 lemons spirit:1 l 99.9%',
  '/jar add m spirit:100 ml strength:98%',
  '/jar correct m entry:1 strength:98%',
  '/jar correct m entry:2 spirit:100 ml 98%',
  '/jar strain m measured:900 ml strength:99%',
  '/jar correct s measured:900 ml strength:99%',
  '/again m spirit:1 l 99%',
  '/mix spirit:1 l strength:99% water:1 l',
  '/dilute spirit:1 l strength:99.9% to-strength:40%',
  '/blend parts:1 l 99% + 1 l 40%',
  '/syrup infusion:1 l strength:99% to-strength:30% to-sweetness:250 g/L',
  '/syrup infusion:920 ml of:8 lemons spirit:1 l 99% to-strength:30% to-sweetness:250 g/L',
  '/adjust liqueur:1 l strength:99% to-strength:30%',
  '/adjust liqueur:1 l strength:20% sweetness:100 g/L to-strength:30% spirit-strength:99.9%',
  '/serving pour:40 ml strength:99%',
  '/label strength:99% sweetness:0 g/L',
  // A glass hydrometer in the cold shows too little: 96 % at 5 °C is more than 98 % at 20 °C (OIML R 22).
  '/dilute spirit:1 l strength:96% at 5 C to-strength:40%',
  '/plan of:10 lemons spirit:1 l 96% at 5 C',
]

test.each(LINES)('%s is refused, with a line that says 95 %', async (line) => {
  const desk = await deskWithJars()
  const { code, message } = await desk.refused(line)
  expect([code, message]).toEqual(['refused', expect.stringContaining('Did you mean 190 proof, 95 %?')])
  const [, instead] = / (\/.*)$/.exec(message)!
  const again = await desk.anyOf(instead!)
  // Whatever is said of that line, it is no longer that nothing distils it.
  expect(again.error?.message ?? '').not.toContain('Anything over')
})

test.each([
  '/dilute spirit:1 l strength:97.2% to-strength:40%',
  '/dilute spirit:1 l 190 proof to-strength:40%',
  '/dilute spirit:1 l 194 proof to-strength:40%',
  '/plan of:10 lemons spirit:1 l 97.2%',
  // Warm, it shows too much.
  '/dilute spirit:1 l strength:98% at 30 C to-strength:40%',
])('%s is taken', async (line) => {
  await jarDesk().ask(line)
})

test('a code with such a spirit is refused unless another is poured', async () => {
  const { encodeBatch } = await import('../../../core/recipe/code/batch-code.ts')
  const { decodeBatch } = await import('../../../core/recipe/code/batch-code.ts')
  const recipe = decodeBatch('11M4QTHJ0001MYJ0JNHC00VV9QPCBAHF5DGB80V3')
  const dried = encodeBatch({
    ...recipe,
    spirits: recipe.spirits.map((each) => ({ ...each, abvHundredthPercent: 9900 })),
  })
  const desk = jarDesk()
  expect((await desk.refused(`/plan from:${dried}`)).message).toContain('Anything over 97.2 %')
  expect((await desk.refused(`/jar start from:${dried}`)).code).toBe('refused')
})
