/** A text as a pattern that finds it and nothing else. */
export const escaped = (text: string): string => text.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&')
