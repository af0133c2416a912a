import { describe, expect, it } from 'vitest'
import { ChatError } from '../../../bot/chat/chat-error.ts'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { fakeCommands } from './fakes.ts'

const parse = (line: string) => {
  const { path, options } = parseLine(line, fakeCommands)
  return [path, Object.entries(options).flat()]
}

const refusal = (line: string) => {
  try {
    return parse(line)
  } catch (error) {
    if (!(error instanceof ChatError)) throw error
    const { code, problem, option, nearest, command } = error
    return { code, problem, option, nearest, command }
  }
}

describe('parseLine', () => {
  it.each<[line: string, path: string, options: string[]]>([
    ['/mix spirit:1 l strength:95% water:750 ml', 'mix', ['spirit', '1 l', 'strength', '95%', 'water', '750 ml']],
    ['mix spirit:1 l', 'mix', ['spirit', '1 l']],
    ['  / MIX  Spirit:  1 l   STRENGTH: 95 % vol ', 'mix', ['spirit', '1 l', 'strength', '95 % vol']],
    ['/mix\tspirit:1\tl', 'mix', ['spirit', '1\tl']],
    ['/mix 1 l strength:95%', 'mix', ['spirit', '1 l', 'strength', '95%']],
    ['/mix spirit : 1 l strength : 95%', 'mix', ['spirit', '1 l', 'strength', '95%']],
    ['/mix strength:95% spirit:1 l', 'mix', ['strength', '95%', 'spirit', '1 l']],
    ['/syrup 1 l strength:94% to-strength:30%', 'syrup', ['infusion', '1 l', 'strength', '94%', 'to-strength', '30%']],
    ['/syrup 1 l ratio:2:1', 'syrup', ['infusion', '1 l', 'ratio', '2:1']],
    ['/syrup 1 l ratio:1 : 1', 'syrup', ['infusion', '1 l', 'ratio', '1 : 1']],
    ['/mix 750 ml 75.5% + 375 ml 40%', 'mix', ['spirit', '750 ml 75.5% + 375 ml 40%']],
    ['/mix “1 l” strength:„95%“', 'mix', ['spirit', '1 l', 'strength', '95%']],
    ['/mix spirit:«1 l» strength: “95%”', 'mix', ['spirit', '1 l', 'strength', '95%']],
    ['/mix', 'mix', []],
    ['/mix spirit:constructor', 'mix', ['spirit', 'constructor']],
    ['/jar list', 'jar list', []],
    ['/JAR  list', 'jar list', []],
    ['/jar start lemon', 'jar start', ['name', 'lemon']],
    ['/jar start "note: it" note:cut by hand', 'jar start', ['name', 'note: it', 'note', 'cut by hand']],
    [String.raw`/jar start "the \"best\" \\ one"`, 'jar start', ['name', String.raw`the "best" \ one`]],
    ['/jar start name:"a b" note:x', 'jar start', ['name', 'a b', 'note', 'x']],
    ['/jar start l note:see foo: name:x "y', 'jar start', ['name', 'l', 'note', 'see foo: name:x "y']],
    ['/jar start l note:"whole: note"', 'jar start', ['name', 'l', 'note', 'whole: note']],
    ['/jar start l note:"yes" she said', 'jar start', ['name', 'l', 'note', '"yes" she said']],
    ['/jar start 5" tall', 'jar start', ['name', '5" tall']],
    ['/jar start レモン 🍋', 'jar start', ['name', 'レモン 🍋']],
  ])('reads %s', (line, path, options) => {
    expect(parse(line)).toEqual([path, options])
  })

  it.each<[line: string, problem: string, nearest: string | null, option?: string]>([
    ['', 'empty_line', null],
    [' / ', 'empty_line', null],
    ['/mixx 1 l', 'unknown_command', 'mix'],
    ['/sryup', 'unknown_command', 'syrup'],
    ['hlep', 'unknown_command', 'help'],
    ['/mix,', 'unknown_command', 'mix'],
    ['/jar strat lemon', 'unknown_command', 'jar start'],
    ['/jar', 'unknown_command', null],
    ['/telephone', 'unknown_command', null],
    ['/__proto__', 'unknown_command', null],
    ['/mix spirt:1 l', 'unknown_option', 'spirit'],
    ['/mix spirit:1 l strenght:95%', 'unknown_option', 'strength'],
    ['/syrup 1 l to-s:30%', 'unknown_option', 'to-strength'],
    ['/syrup 1 l to_strength:30%', 'unknown_option', 'to-strength'],
    ['/mix 1 l colour:red', 'unknown_option', null],
    ['/mix 1 l __proto__:95%', 'unknown_option', null],
    ['/mix 1 l constructor:95%', 'unknown_option', null],
    ['/mix 1 l zucchéro:3', 'unknown_option', null],
    ['/mix 1 l strength:95% Strength:40%', 'option_twice', null, 'strength'],
    ['/mix 1 l spirit:2 l', 'option_twice', null, 'spirit'],
    ['/mix spirit: strength:95%', 'option_empty', null, 'spirit'],
    ['/mix 1 l strength:', 'option_empty', null, 'strength'],
    ['/mix 1 l strength:""', 'option_empty', null, 'strength'],
    ['/mix spirit 1 l strength 95%', 'colon_missing', 'spirit'],
    ['/jar list lemon', 'stray_text', null],
    ['/jar start "a b" c note:x', 'stray_text', null],
    ['/jar start "a b', 'quote_open', null, 'name'],
    [String.raw`/jar start "a b\"`, 'quote_open', null, 'name'],
    ['/mix 1 l\nstrength:95%', 'control_characters', null],
    ['/mix 1 l \u001b[31m', 'control_characters', null],
    [`/mix ${'1'.repeat(4000)}`, 'line_too_long', null],
  ])('refuses %s', (line, problem, nearest, option) => {
    expect(refusal(line)).toMatchObject({ problem, nearest, option: option ?? null })
  })

  it('names the command and a code that scripts can branch on', () => {
    expect(refusal('/mix spirt:1 l')).toMatchObject({ code: 'unknown_option', command: 'mix' })
    expect(refusal('/mix 1 l spirit:2 l')).toMatchObject({ code: 'too_many_options', command: 'mix' })
    expect(refusal('/mxi')).toMatchObject({ code: 'unknown_command', command: null })
  })
})
