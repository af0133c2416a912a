import { z } from 'zod'
import { defineCommand } from '../../chat/command.ts'
import { jarTag } from '../../picture/jar-tag.ts'
import { jarTagData } from '../../picture/jar-tag-data.ts'
import { pictureFile } from '../picture-file.ts'
import { kitchenOf } from '../typed-in.ts'
import { unprintedNotes } from '../unprinted-notes.ts'
import { dangerActions, dangerCautions } from './jar-dangers.ts'
import { jarBrief } from './jar-data.ts'
import { jarFields } from './jar-fields.ts'
import { jarNamed } from './jar-named.ts'

export const jarTagCommand = defineCommand({
  path: 'jar tag',
  input: z.object({ jar: jarFields.jar }),
  async run({ jar }, context) {
    const view = await jarNamed(jar.is, context)
    const data = jarTagData(view)
    const { name } = data
    return {
      headline: { group: 'headlines', key: 'jar_tag', values: { name } },
      table: [],
      sure: [],
      notes: [...(await unprintedNotes(data)), { group: 'notes', key: 'print_size', values: { count: 1 } }],
      cautions: dangerCautions([view.story]),
      actions: dangerActions(view, context),
      data: jarBrief(view),
      kitchen: kitchenOf({}),
      files: [
        pictureFile('larderbell-jar-tag.png', { group: 'files', key: 'jar_tag', values: data }, (pen) =>
          jarTag(data, pen),
        ),
      ],
    }
  },
})
