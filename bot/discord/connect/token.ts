/** Anything else would not fit into a header, and the error about it would show it. */
const TOKEN = /^[\x21-\x7e]+$/

/** Whether a text can be sent as a token at all. */
export const isToken = (text: string): boolean => TOKEN.test(text)
