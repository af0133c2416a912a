import { existsSync } from 'node:fs'
import { loadEnvFile } from 'node:process'
import { z } from 'zod'
import type { ChatProblems } from './chat/chat-error.ts'

const WIDTH = { least: 40, most: 200 }

export interface Config {
  /** Columns of text, or null: the terminal's own. */
  readonly width: number | null
  readonly noColour: boolean
}

/** The settings, or what is wrong with each of those that cannot be taken. */
export type ConfigRead =
  | { readonly ok: true; readonly config: Config }
  | { readonly ok: false; readonly wrong: readonly ChatProblems['bad_width'][] }

const isSet = (text: string | undefined): text is string => text !== undefined && text.trim() !== ''

const schema = z.object({
  width: z
    .string()
    .trim()
    .regex(/^\d{1,4}$/)
    .transform(Number)
    .pipe(z.number().min(WIDTH.least).max(WIDTH.most))
    .nullable(),
  noColour: z.boolean(),
})

/** Adds the settings of a `.env` file to the environment, which wins. */
export const loadSettings = (path: string): void => {
  if (existsSync(path)) loadEnvFile(path)
}

/** Reads the environment once; everything else is told. */
export const readConfig = (environment: Readonly<Record<string, string | undefined>>): ConfigRead => {
  const typed = environment.LARDERBELL_WIDTH
  const noColour = isSet(environment.NO_COLOR)
  const read = schema.safeParse({ width: isSet(typed) ? typed : null, noColour })
  return read.success ? { ok: true, config: read.data } : { ok: false, wrong: [{ typed: typed ?? '', ...WIDTH }] }
}
