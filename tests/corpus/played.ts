import type { Said } from './in-terminal.ts'

export const SURFACES = ['text80', 'text44', 'json', 'discord', 'kept', 'keptInDiscord'] as const

export type Surface = (typeof SURFACES)[number]

/** What was said in a session on each surface, and what is kept at its end. */
export type Played = Readonly<Record<Surface, Said>>
