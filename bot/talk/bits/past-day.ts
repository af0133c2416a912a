import type { Bit } from './bit.ts'

/** A day that can only be over: `three days ago`, `ieri`, `last Friday`. */
const PAST = /^(?:yesterday|ieri|last|l altro ieri)\b|\b(?:ago|back|fa|scors[oa])$/

export const isPastDay = ({ kind, text }: Bit): boolean => kind === 'date' && PAST.test(text.toLowerCase())
