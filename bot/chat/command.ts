import type { z } from 'zod'
import type { Reply } from './reply.ts'

/** What a command may know besides its input. */
export interface Context {
  readonly nowMs: number
}

/**
 * One command, for every surface. Its options are the keys of `input`, each a schema from `bot/commands/fields.ts` that
 * takes the text typed and returns a quantity; help, completion and the grammar read the names from there.
 */
export interface Command<Path extends string = string, Shape extends z.ZodRawShape = z.ZodRawShape> {
  /** `syrup`, later `jar start`. */
  readonly path: Path
  readonly input: z.ZodObject<Shape>
  run(input: z.output<z.ZodObject<Shape>>, context: Context): Reply
}

export const defineCommand = <const Path extends string, Shape extends z.ZodRawShape>(
  command: Command<Path, Shape>,
): Command<Path, Shape> => command
