import stringWidth from 'string-width'
import { describe, expect, it, test } from 'vitest'
import { call } from '../../../bot/calls/call.ts'
import { inMore } from '../../../bot/chat/depth.ts'
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
  it('says the answer first, then the table, notes, cautions and what can be typed next, and that there is more', () => {
    expect(render(reply, fakeSpeech, { width: 80, colour: false })).toBe(`Add 560 ml of water and 430 g of sugar

  Strength  30.2 % vol
  量        1.56 l

Cup taken as the US cup.

! This burns.
! This is strong.

  Weaker: /dilute spirit:1 l 95% to-strength:30%   More: more`)
  })

  const deep = fakeReply(
    {},
    {
      ...reply,
      under: [say('It makes 1.5 l.')],
      table: [reply.table[0]!, { ...reply.table[1]!, depth: 'more' as const }],
      notes: inMore(reply.notes),
      cautions: [reply.cautions[0]!, ...inMore(reply.cautions.slice(1))],
      actions: inMore(reply.actions),
    },
  )

  it('keeps for one question deeper what stands there, and how sure it is', () => {
    expect(render(deep, fakeSpeech, { width: 80, colour: false })).toBe(`Add 560 ml of water and 430 g of sugar
It makes 1.5 l.

  Strength  30.2 % vol

! This burns.

More: more`)
    expect(render(deep, fakeSpeech, { width: 80, colour: false }, [], 'more')).toBe(`  量  1.56 l

Strength to ± 0.9 % vol.

• Cup taken as the US cup.

! This is strong.

  Weaker: /dilute spirit:1 l 95% to-strength:30%`)
  })

  it('says each part once in both depths together', () => {
    const lines = (shown: 'first' | 'more' | 'whole') =>
      render(deep, fakeSpeech, { width: 80, colour: false }, [], shown)
        .split('\n')
        .map((line) => line.trim())
    const whole = lines('whole')
    for (const part of ['Strength to ± 0.9 % vol.', '! This burns.', '! This is strong.']) {
      expect(whole.filter((line) => line === part)).toHaveLength(1)
      expect([...lines('first'), ...lines('more')].filter((line) => line === part)).toHaveLength(1)
    }
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
    expect(text).toBe('red[31m lla second line\n\nred[31m lla second line')
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
