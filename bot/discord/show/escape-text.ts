import { isolated } from './isolate-rtl.ts'
import { plainText } from './plain-text.ts'
import { STAMP, shownStamp } from './timestamps.ts'

/**
 * What Discord's markdown reads anywhere: emphasis, code, spoilers, links, mentions and everything else in angle brackets;
 * a colon where it could begin an emoji's name or belongs to a web address.
 */
const ANYWHERE = /[\\*_~`|<>[\]@]|:(?=\/|\S*?:)/g

/** And at the beginning of a line: headings, small print, lists. */
const MARK_AT_START = /^(\s*)([#+-])/
const NUMBER_AT_START = /^(\s*\d+)([.)])(?=\s|$)/

const escapePart = (text: string): string => isolated(text.replace(ANYWHERE, '\\$&'))

/** As `escapeText`, of text that is plain already. */
export const escapePlain = (plain: string): string =>
  plain
    .split(STAMP)
    .map((part, index) => (index % 2 === 1 ? shownStamp(part) : escapePart(part.replace(/[\uFDD0\uFDD1]/g, ''))))
    .join('')
    .replace(MARK_AT_START, '$1\\$2')
    .replace(NUMBER_AT_START, '$1\\$2')

/**
 * A text of one line for Discord, shown as it was typed: markdown, mentions, emoji names and links in it do nothing, and
 * words from right to left turn nothing round beside them. The days and moments that the format has marked become timestamps. Discord takes the backslash before any sign that is
 * neither letter, digit nor space for an escape (its documentation of message formatting).
 */
export const escapeText = (text: string): string => escapePlain(plainText(text))
