import { findWhole } from '../../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { expectFree } from '../../../../core/jar/state/running-jars.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { change, recordIn, withJar } from '../step/record-step.ts'
import { stepReply } from '../step/step-reply.ts'

export const jarRenameCommand = defineCommand({
  ...signature('jar rename'),
  topic: 'jars',
  async run(input, context) {
    const { before, recorded } = await change(context, ({ jars, ...person }) => {
      const jar = findWhole(input.jar.is, jars)
      const others = jars.filter(({ id }) => id !== jar.id)
      asOptionProblem('to', () => expectFree(input.to.is, others))
      const made = recordIn(jar, input, { happening: () => ({ kind: 'renamed', name: input.to.is }) }, context)
      return {
        person: withJar({ ...person, jars }, made.jar),
        made: { before: jarStateOf(jar.entries)!.name, recorded: made },
      }
    })
    return stepReply(context, input, recorded, {
      headline: { group: 'headlines', key: 'jar_renamed', values: { before, name: recorded.story.name } },
    })
  },
})
