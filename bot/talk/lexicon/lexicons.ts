import { english } from './english.ts'
import { italian } from './italian.ts'

/** The languages that are understood, the usual one first. */
export const LEXICONS = [english, italian]
