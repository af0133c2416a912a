import { remindedJar } from '../../../../core/jar/tasks/reminded-jar.ts'
import type { Context } from '../../../chat/command.ts'
import { kitchenAmong } from './jar-kitchen.ts'

/** What a reminder says of a jar, told in its own units. */
export const remindedIn =
  (settings: Pick<Context['settings'], 'units'>) => (asked: Parameters<typeof remindedJar>[0]) => ({
    ...remindedJar(asked),
    kitchen: kitchenAmong(asked.story, settings),
  })
