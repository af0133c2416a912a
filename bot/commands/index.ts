import { adjustCommand } from './adjust.ts'
import { blendCommand } from './blend.ts'
import { botanicalCommand } from './botanical.ts'
import { cautionsCommand } from './cautions.ts'
import { diluteCommand } from './dilute.ts'
import { labelCommand } from './label.ts'
import { mixCommand } from './mix.ts'
import { planCommand } from './plan.ts'
import { servingCommand } from './serving.ts'
import { syrupCommand } from './syrup.ts'

/** Every command, in the order in which help lists them: the one list that all surfaces read. */
export const commands = [
  planCommand,
  syrupCommand,
  mixCommand,
  diluteCommand,
  blendCommand,
  adjustCommand,
  servingCommand,
  labelCommand,
  botanicalCommand,
  cautionsCommand,
] as const
