import { describe, expect, it } from 'vitest'
import { recipesTyped } from '../../../bot/chat/hear/recipe-typed.ts'
import { talker } from './told.ts'

const { countOf, mayBegin } = recipesTyped

describe('lines that were pasted at once', () => {
  it.each([
    ['plum brandy | 2 lbs plums | a fifth of brandy | a mug of sugar | let it stand till spring', 5],
    [
      'Damsons in gin: | - 450 g damsons | - 70 cl gin | - 200 g sugar | - shake daily for a week | - strain after 3 months',
      6,
    ],
    ['8 oranges | 3 cloves | a litre of rum', 3],
    ['Arancello | 8 arance | 1 l alcol 95% | 500 g zucchero | lasciare al buio due settimane', 5],
    ['1 kg pears | 2 litres of vodka | some honey | wait a month | strain and bottle | what is due?', 5],
  ])('%s are one recipe of %d', (lines, count) => {
    const typed = lines.split(' | ')
    expect(countOf(typed)).toBe(count)
    expect(mayBegin(typed[0]!)).toBe(true)
  })

  it.each([
    '8 oranges in a litre of 60% | 400 g sloes in 70 cl gin | 300 g ginger in 50 cl vodka',
    'sloe gin | plum brandy | raspberry vodka',
    '8 oranges in a litre of 60% | double | drier',
    'strained the lemon, 930 ml at 87 | 510 g sugar and 1.5 l water | six bottles',
    '8 oranges | how much ginger per litre? | 1 l vodka',
    '8 oranges | /dilute 1 l 95% to-strength:60% | 1 l vodka',
    'shook it | strained it | bottled it',
  ])('%s stand by themselves', (lines) => {
    expect(countOf(lines.split(' | '))).toBe(0)
  })
})

it('names each line of which nothing was taken, whole', async () => {
  const recipe =
    'plum brandy\n2 lbs plums\na fifth of brandy\nabout a mug of sugar\nsome vanilla\nlet it stand till it tastes right'
  const { outcome, read } = await talker().hear(recipe)
  expect(read).toMatch(/^\/plan of:2 lbs plums \+ .*vanilla.* spirit:1 fifth brandy/)
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  const left = notes.find(({ key }) => key === 'left_out')
  expect(read).toContain('sugar:280 ml')
  expect(JSON.stringify(left)).toContain('let it stand till it tastes right')
})
