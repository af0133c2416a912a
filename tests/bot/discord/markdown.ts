/** What Discord's documentation of message formatting gives a meaning, after the escapes have been taken out. */
const MEANINGFUL: readonly RegExp[] = [
  /[*_~`|]/,
  /<[@#:/t]/,
  /@(?:everyone|here)/,
  /\[[^\]]*\]\(/,
  /(?:https?|steam|discord):\/\//,
  /:[^\s:]+:/,
  /^\s*(?:#{1,3}|-#|>{1,3}|[-*+]|\d+[.)])(?:\s|$)/,
]

const ESCAPE = /\\[^0-9A-Za-z\s]/g

/** Stands for a sign that was escaped and so means nothing. */
const INERT = '\u2588'

/** What in a text of one line Discord would not show as it stands. */
export const meanings = (markdown: string): readonly string[] => {
  const left = markdown.replace(ESCAPE, INERT).replace(/<t:-?\d+:[Df]>/g, INERT)
  return MEANINGFUL.flatMap((pattern) => pattern.exec(left)?.[0] ?? [])
}

/** What is shown of a text in which nothing means anything; isolates show nothing. */
export const shownOf = (markdown: string): string =>
  markdown.replace(/\\([^0-9A-Za-z\s])/g, '$1').replace(/[\u2068\u2069]/g, '')
