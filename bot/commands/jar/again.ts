import { z } from 'zod'
import { DomainError } from '../../../core/domain-error.ts'
import { findJar } from '../../../core/jar/find-jar.ts'
import { freeName } from '../../../core/jar/jar-name.ts'
import { storyOf } from '../../../core/jar/story.ts'
import { defineCommand } from '../../chat/command.ts'
import { writeLine } from '../../chat/write-line.ts'
import type { Message } from '../../text/words.ts'
import { fields, type Given } from '../fields.ts'
import { planFields } from '../plan-fields.ts'
import { spiritPortions } from '../portions.ts'
import { againOptions, factorOf } from './again-options.ts'
import { jarFields } from './jar-fields.ts'
import { runningJars } from './running.ts'
import { jarStartCommand } from './start.ts'

/** What was typed, of those that were given. */
const typedOf = (options: { readonly [option: string]: Given<unknown> | undefined }) =>
  Object.fromEntries(
    Object.entries(options).flatMap(([option, given]) => (given === undefined ? [] : [[option, given.typed] as const])),
  )

export const againCommand = defineCommand({
  path: 'again',
  input: z.object({
    jar: jarFields.jar,
    spirit: planFields.drinkable.optional(),
    strength: fields.strength.optional(),
    'to-strength': fields.wishedStrength.optional(),
    'to-sweetness': fields.sweetness.optional(),
    name: jarFields.name.optional(),
  }),
  async run({ jar: { is, typed }, ...own }, context) {
    const { jars } = await context.store.read(context.userId)
    const jar = findJar(is, jars)
    const story = storyOf(jar.entries)
    if (story === null) throw new DomainError('not_found', 'no_such_jar', { typed, nearest: null })
    const other =
      own.spirit === undefined
        ? null
        : { typed: own.spirit.typed, spirits: spiritPortions('again', own.spirit.is, own.strength) }
    const taken = runningJars(jars).map((running) => running.story.name)
    const options = {
      name: freeName(story.name, taken),
      ...againOptions(story, jar.entries, other),
      ...typedOf(own),
    }
    const reply = await jarStartCommand.run(jarStartCommand.input.parse(options), context)
    const made = await context.store.read(context.userId)
    const { started } = storyOf(findJar(options.name, made.jars).entries)!
    const values = {
      name: story.name,
      factor: factorOf(story, other),
      isOther: other !== null,
      line: writeLine('jar undo', options.name),
      targets: started.plan.targets,
    }
    const asBefore: Message<'notes'> = { group: 'notes', key: 'again_as', values }
    return { ...reply, notes: [asBefore, ...reply.notes] }
  },
})
