import { adjustCommand } from './adjust.ts'
import { blendCommand } from './blend.ts'
import { diluteCommand } from './dilute.ts'
import { mixCommand } from './mix.ts'
import { syrupCommand } from './syrup.ts'

/** Every command, in the order in which help lists them: the one list that all surfaces read. */
export const commands = [syrupCommand, mixCommand, diluteCommand, blendCommand, adjustCommand] as const
