import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import { diagnoseAll } from '../../../core/trouble/diagnose.ts'
import { asItStands } from '../../../core/trouble/trouble-told.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { emergencyReply } from '../../chat/emergency-reply.ts'
import { jarNamed } from '../jar/known/jar-named.ts'
import { noAtOnce } from './asked-behind.ts'
import { keepTold } from './keep-told.ts'
import { answered, knownFacts, toldBefore } from './known-facts.ts'
import { jarChoices } from './trouble-actions.ts'
import { troubleData, troubleReply } from './trouble-reply.ts'
import { whatReply } from './what-reply.ts'

export const troubleCommand = defineCommand({
  ...signature('trouble'),
  topic: 'planning',
  isOfLineAlone: true,
  async run(input, context) {
    const held = input.jar === undefined ? null : await jarNamed(input.jar.is, context)
    if (input.symptom === undefined) return whatReply(input, held, context)
    const [diagnosis, ...others] = diagnoseAll(input.symptom.is, knownFacts(input, held, context), {
      ...toldBefore(input, held),
      ...answered(input),
    })
    const also = others.map(({ symptom }) => symptom)
    if (diagnosis.verdict.kind === 'emergency') {
      const { settings, zone } = context
      const reply = emergencyReply('methanol', { country: settings.country, zone, units: settings.units })
      return { ...reply, data: { ...reply.data, ...troubleData(diagnosis, also) } }
    }
    const told = await keepTold(diagnosis, input, held, context)
    const asking = { input, ...told, facts: diagnosis.facts, also, context }
    const standing = told.held === null ? diagnosis : asItStands(diagnosis, standingTroubles(told.held.story))
    return noAtOnce(troubleReply(standing, asking, await jarChoices(asking)), standing, asking.input)
  },
})
