import { newJarId } from '../../../../core/jar/entry/new-jar-id.ts'
import { pourApart } from '../../../../core/jar/pour/pour-apart.ts'
import { shareMeant } from '../../../../core/jar/pour/share-meant.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import { findWhole } from '../../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { expectFree } from '../../../../core/jar/state/running-jars.ts'
import type { Jar } from '../../../../store/person.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { pouredOff } from '../../options/input-to-portion.ts'
import { pouredReply } from '../step/poured-reply.ts'
import { change, enteredBy, momentGiven } from '../step/record-step.ts'

export const jarSplitCommand = defineCommand({
  ...signature('jar split'),
  topic: 'jars',
  async run(input, context) {
    const { nowMs } = context
    const [rest, portion] = await change(context, (person) => {
      const jar = findWhole(input.jar.is, person.jars)
      asOptionProblem('into', () => expectFree(input.into.is, person.jars))
      const moment = momentGiven(input.when, jar.entries, context)
      const share = asOptionProblem('amount', () => shareMeant(jarStateOf(jar.entries)!, pouredOff(input.amount.is)))
      const made = pourApart(jar, { share, into: input.into.is }, moment, enteredBy(input, context))
      const taken = person.jars.map(({ id }) => id)
      const kept: Jar = { ...jar, entries: made.rest.entries }
      const poured: Jar = { ...jar, id: newJarId(`${input.into.is} ${nowMs}`, taken), entries: made.portion.entries }
      const jars = person.jars.flatMap((each) => (each.id === jar.id ? [kept, poured] : [each]))
      return { person: { ...person, jars }, made: [kept, poured] as const }
    })
    const [left, out] = [rest, portion].map(({ entries }) => jarStateOf(entries)!)
    const values = {
      name: left!.name,
      into: out!.name,
      leftMl: contentsOf(left!).outcome.volumeMl,
      outMl: contentsOf(out!).outcome.volumeMl,
    }
    return pouredReply(context, input, portion, [rest, portion], { group: 'headlines', key: 'jar_split', values })
  },
})
