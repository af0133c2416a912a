import { describe, expect, it } from 'vitest'
import { tell } from '../stories/tell.ts'

/** The first lines of the last answer, but for how it was read. */
async function lastOf(lines: readonly string[]): Promise<string> {
  const told = await tell(['@ 2026-11-02 18:00', ...lines.map((line) => `> ${line}`)].join('\n'))
  const [answer = ''] = told.split(/^> .*\n/m).slice(-1)
  return answer
    .replaceAll('\u00a0', ' ')
    .replace(/^read as .*\n+/, '')
    .replace(/([^\n])\n(?! *\n)/g, '$1 ')
}

const SYRUP = '920 ml at 82, to 30 and 250 g/L'

// Shop liqueurs have 230 to 310 g/L: UK food tables, as in the handbook.
describe('what a wish changes is said first, in a number and in words', () => {
  it.each([
    [[SYRUP, 'drier'], 'Drier: 190 g/L instead of 250, a bit drier than a shop liqueur. Dissolve '],
    [[SYRUP, 'drier', 'less sweet'], 'Drier: 120 g/L instead of 190, much drier than a shop liqueur. Dissolve '],
    [[SYRUP, 'sweeter'], 'Sweeter: 310 g/L instead of 250, like a shop liqueur. Dissolve '],
    [[SYRUP, 'make it 200'], 'Drier: 200 g/L instead of 250, '],
    [[SYRUP, 'stronger'], 'Stronger: 35 % instead of 30. Dissolve '],
    [
      [SYRUP, 'a bit drier and stronger'],
      'Drier: 220 g/L instead of 250, a bit drier than a shop liqueur. Stronger: 32 %',
    ],
    [
      ['10 lemons and a litre of 95% spirit', 'più dolce'],
      'Sweeter: 270 g/L instead of 190, like a shop liqueur. Buy ',
    ],
    [['1 lb cherries and a 750 ml bottle of 100 proof vodka', 'sweeter'], 'Sweeter: 9 oz/quart instead of 6 ½, like '],
  ])('%j', async (lines, first) => {
    expect((await lastOf(lines)).startsWith(first), await lastOf(lines)).toBe(true)
  })

  it('goes on from what a jar was planned to be', async () => {
    const start = '/jar start lemon of:10 lemons spirit:1 l 95% to-sweetness:250 g/L'
    const [strained, drier] = ['strained it, 900 ml', 'drier']
    expect(await lastOf([start, strained, drier])).toMatch(/^Drier: 190 g\/L instead of 250, /)
  })

  it.each([
    [SYRUP, 'for 6 bottles'],
    [SYRUP, '1 l at 80, to 30 and 200 g/L'],
    ['10 lemons and a litre of 95% spirit', '10 oranges and a litre of 95% spirit, 250 g/L'],
  ])('says nothing of it where another drink is asked for: %s, then %s', async (...lines) => {
    expect(await lastOf(lines)).not.toMatch(/instead of/)
  })
})
