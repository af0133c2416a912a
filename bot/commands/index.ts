import { adjustCommand } from './adjust.ts'
import { blendCommand } from './blend.ts'
import { diluteCommand } from './dilute.ts'
import { labelCommand } from './label.ts'
import { mixCommand } from './mix.ts'
import { servingCommand } from './serving.ts'
import { syrupCommand } from './syrup.ts'

/** Every command, in the order in which help lists them: the one list that all surfaces read. */
export const commands = [
  syrupCommand,
  mixCommand,
  diluteCommand,
  blendCommand,
  adjustCommand,
  servingCommand,
  labelCommand,
] as const
