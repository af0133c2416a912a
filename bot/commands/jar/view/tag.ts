import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import type { Reply } from '../../../chat/reply.ts'
import { jarTag } from '../../../picture/tag/jar-tag.ts'
import { jarTagData } from '../../../picture/tag/jar-tag-data.ts'
import { pictureFile } from '../../reply/picture-file.ts'
import { unprintedNotes } from '../../reply/unprinted-notes.ts'
import { dangerActions, dangerCautions } from '../known/jar-dangers.ts'
import { jarBrief } from '../known/jar-data.ts'
import { kitchenOfJar } from '../known/jar-kitchen.ts'
import { jarNamed } from '../known/jar-named.ts'
import { heldFirst } from '../known/told-trouble.ts'

export const jarTagCommand = defineCommand({
  ...signature('jar tag'),
  topic: 'jars',
  async run({ jar }, context) {
    const view = await jarNamed(jar.is, context)
    const data = jarTagData(view)
    const { name } = data
    const reply: Reply = {
      headline: { group: 'headlines', key: 'jar_tag', values: { name } },
      table: [],
      sure: [],
      notes: [...(await unprintedNotes(data)), { group: 'notes', key: 'print_size', values: { count: 1 } }],
      cautions: dangerCautions([view.story]),
      actions: dangerActions(view, context),
      data: jarBrief(view),
      kitchen: kitchenOfJar({}, view.story),
      files: [
        pictureFile('larderbell-jar-tag.png', { group: 'files', key: 'jar_tag', values: data }, (pen) =>
          jarTag(data, pen),
        ),
      ],
    }
    return heldFirst(reply, [view.story])
  },
})
