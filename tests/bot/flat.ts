/** A text in one line, however wide the screen was that it was broken for. */
export const flat = (text: string): string => text.replaceAll(/\s+/g, ' ')
