import stringWidth from 'string-width'
import { describe, expect, it, test } from 'vitest'
import { call } from '../../../bot/calls/call.ts'
import { render } from '../../../bot/terminal/show/render.ts'
import { textWidth } from '../../../bot/terminal/show/text-width.ts'
import { callTyped } from '../call-typed.ts'
import { fakeReply } from '../chat/fakes.ts'
import { fakeSpeech } from './fakes.ts'

const say = (text: string) => ({ group: 'any', key: 'text', values: { text } })

const reply = fakeReply(
  {},
  {
    headline: say('Add 560 ml of water and 430 g of sugar'),
    table: [
      { label: say('Strength'), cell: say('30.2 % vol') },
      { label: say('量'), cell: say('1.56 l') },
    ],
    sure: [say('Strength to ± 0.9 % vol.')],
    notes: [say('Cup taken as the US cup.')],
    cautions: [say('This burns.'), say('This is strong.')],
    actions: [{ label: say('Weaker'), call: callTyped('/dilute 1 l 95% to-strength:30%') }],
  },
)

describe('render', () => {
  it('says the answer first, then the table, how sure, notes, cautions and what can be typed next', () => {
    expect(render(reply, fakeSpeech, { width: 80, colour: false })).toBe(`Add 560 ml of water and 430 g of sugar

  Strength  30.2 % vol
  量        1.56 l

Strength to ± 0.9 % vol.

• Cup taken as the US cup.

! Caution: This burns.
! Caution: This is strong.

Next you can type:
  Weaker: /dilute spirit:1 l 95% to-strength:30%`)
  })

  it('leaves out what a reply does not have', () => {
    const bare = fakeReply({}, { headline: say('Done.') })
    expect(render(bare, fakeSpeech, { width: 80, colour: false })).toBe('Done.')
  })

  it('emphasises with colour only where it may', () => {
    const coloured = render(reply, fakeSpeech, { width: 80, colour: true })
    expect(coloured).toContain('\u001b[1mAdd 560 ml')
    expect(coloured).toContain('\u001b[33m')
  })

  it.each([40, 57, 200])('keeps to %i columns, except for a line to type', (width) => {
    const long = 'bitter 苦い oranges '.repeat(30)
    const wide = fakeReply(
      {},
      {
        headline: say(long),
        table: [{ label: say(long), cell: say('x'.repeat(300)) }],
        sure: [say(long)],
        notes: [say(long)],
        cautions: [say(long)],
        actions: [{ label: say('Again'), call: call('jar rename', { jar: long }) }],
      },
    )
    const lines = render(wide, fakeSpeech, { width, colour: false }).split('\n')
    const typed = lines.filter((line) => line.includes('/jar rename'))
    expect(typed).toEqual([`    /jar rename ${long}`])
    for (const line of lines) if (!typed.includes(line)) expect(stringWidth(line)).toBeLessThanOrEqual(width)
  })

  it('lets no text from people steer the terminal', () => {
    const evil = say('red\u001b[31m\u0007 \u202ella\r\nsecond\u0000 line')
    const text = render(fakeReply({}, { headline: evil, notes: [evil] }), fakeSpeech, { width: 80, colour: false })
    expect(text).toBe('red[31m lla second line\n\n• red[31m lla second line')
  })
})

it.each<[text: string, columns: number]>([
  ['', 0],
  ['Crème', 5],
  ['Cre\u0300me', 5],
  ['リキュール', 10],
  ['🍋', 2],
  ['−18 °C', 6],
  // Emoji whose first character is narrow, or that are several joined.
  ['⚗️', 2],
  ['☕', 2],
  ['❤️', 2],
  ['👩🏽‍🌾', 2],
])('gives %s its columns', (text, columns) => {
  expect(textWidth(text)).toBe(columns)
})

test('counts plain text as string-width does', () => {
  const plain = Array.from({ length: 0x3000 - 0x20 }, (_, index) => String.fromCodePoint(0x20 + index))
  for (const character of plain) expect([character, textWidth(character)]).toEqual([character, stringWidth(character)])
})
