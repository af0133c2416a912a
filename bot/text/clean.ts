/** Control characters, halves of characters, and the marks that reorder a line. */
const HARMFUL = /[\p{Cc}\p{Cs}\u061C\u200E\u200F\u2028-\u202E\u2066-\u2069]/gu

/** Text from people, safe for a terminal: it can move no cursor, start no line and hide nothing. */
export const clean = (text: string): string => text.replace(/[\t\r\n]+/g, ' ').replace(HARMFUL, '')
