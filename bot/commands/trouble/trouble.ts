import { diagnoseAll } from '../../../core/trouble/diagnose.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { emergencyReply } from '../../chat/emergency-reply.ts'
import { jarNamed } from '../jar/known/jar-named.ts'
import { answered, knownFacts } from './known-facts.ts'
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
    const [diagnosis, ...others] = diagnoseAll(input.symptom.is, knownFacts(input, held, context), answered(input))
    const also = others.map(({ symptom }) => symptom)
    if (diagnosis.verdict.kind === 'emergency') {
      const { settings, zone } = context
      const reply = emergencyReply('methanol', { country: settings.country, zone, units: settings.units })
      return { ...reply, data: { ...reply.data, ...troubleData(diagnosis, also) } }
    }
    const asking = { input, held, facts: diagnosis.facts, also, context }
    return troubleReply(diagnosis, asking, await jarChoices(asking))
  },
})
