/** Names of options in a command's line: `spirit:1 l 95%` tells of no spirit that went anywhere. */
const OPTION_NAMES = /(?<=\s)[a-z-]+:(?=\S)/g

/** A command about a jar before its options tells of no glass: `/jar taste m note:the bag burst`. */
const JAR_COMMAND =
  /^\/jar (?=(?:add|bottle|correct|discard|empty|filter|label|later|list|open|rename|shake|show|start|strain|sweeten|tag|taste|undo) )(?=.*\s[a-z-]+:\S)/

/** Letters between which an apostrophe belongs to the word: `can't`, `he's`. */
const CONTRACTION = /(?<=[a-z])'(?=(?:t|s|re|ve|m|ll|d)(?![a-z]))/g

/** Short ways of typing, whole words. */
const SHORT: Readonly<Record<string, string>> = {
  u: 'you',
  ur: 'your',
  r: 'are',
  pls: 'please',
  plz: 'please',
  plse: 'please',
  cnt: 'cant',
  carnt: 'cant',
  canot: 'cant',
  cannot: 'cant',
  wnt: 'wont',
  wke: 'wake',
  waek: 'wake',
  brth: 'breathe',
  drnk: 'drank',
  drak: 'drank',
  druk: 'drunk',
  wno: 'wont',
  nt: 'not',
  isn: 'isnt',
  aint: 'isnt',
  dosent: 'doesnt',
  doesn: 'doesnt',
  dsnt: 'doesnt',
  smbd: 'somebody',
  sm1: 'someone',
  some1: 'someone',
  nn: 'non',
  nonn: 'non',
  xke: 'perche',
  perke: 'perche',
  cmq: 'comunque',
  dgo: 'dog',
  dpg: 'dog',
  odg: 'dog',
  doog: 'dog',
  cta: 'cat',
  aet: 'ate',
  eey: 'eye',
  eyr: 'eye',
  eys: 'eyes',
  eyse: 'eyes',
  grandsn: 'grandson',
  gransn: 'grandson',
}

/** One letter twice at most: `heeelp` is `help` to the look-up of words, `noooo` is `no`. */
const calmed = (text: string): string => text.replace(/([a-z])\1{2,}/g, '$1')

/** Longest stretch that is looked at; a line is at most that long. */
const MOST = 4000

/**
 * A text in lower-case words of a to z and digits with one space between, without accents and apostrophes; `.` stands
 * for the end of a sentence or of an option's name, `,` for a comma.
 */
export const plainWords = (text: string): readonly string[] =>
  calmed(
    (text.startsWith('/')
      ? text.toLowerCase().replace(JAR_COMMAND, '/').replace(OPTION_NAMES, '. ')
      : text.toLowerCase()
    )
      .slice(0, MOST)
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .replace(/[’‘`´ʼ]/g, "'"),
  )
    .replace(CONTRACTION, '')
    .replace(/\b(is|are|was|were|do|does|did|have|has|had|could|would|should|wo|ca|can)n? t(?![a-z])/g, '$1nt')
    .replace(/\bcannt\b/g, 'cant')
    .replace(/\bcan not\b/g, 'cant')
    .replace(/(?<=\d)[.,](?=\d)/g, 'p')
    .replace(/[.!?;:\n\r…]+/g, ' . ')
    .replace(/,/g, ' , ')
    .replace(/%/g, ' percent ')
    .replace(/(?<=\d)(?=[a-z])/g, ' ')
    .replace(/[^a-z0-9.,]+/g, ' ')
    .trim()
    .split(' ')
    .map((word) => (Object.hasOwn(SHORT, word) ? SHORT[word]! : word))
