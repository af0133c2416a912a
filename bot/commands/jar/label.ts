import { z } from 'zod'
import { defineCommand } from '../../chat/command.ts'
import { bottleLabel } from '../../picture/bottle-label.ts'
import { bottleLabelData, bottleSizesOf } from '../../picture/bottle-label-data.ts'
import { pictureFile } from '../picture-file.ts'
import { planFields } from '../plan-fields.ts'
import { kitchenOf } from '../typed-in.ts'
import { unprintedNotes } from '../unprinted-notes.ts'
import { expectKeeping } from './already.ts'
import { dangerActions, dangerCautions } from './jar-dangers.ts'
import { jarBrief } from './jar-data.ts'
import { jarFields } from './jar-fields.ts'
import { jarNamed } from './jar-named.ts'

/** Files of a reply. */
const MOST_LABELS = 10

export const jarLabelCommand = defineCommand({
  path: 'jar label',
  input: z.object({ jar: jarFields.jar, already: planFields.yesNo.optional() }),
  async run(input, context) {
    const view = await jarNamed(input.jar.is, context)
    expectKeeping('jar label', 'label_ferments', view.story, input)
    const sizes = bottleSizesOf(view).slice(0, MOST_LABELS)
    const labels = (sizes.length === 0 ? [null] : sizes).map((volumeMl) => bottleLabelData(view, volumeMl))
    return {
      headline: { group: 'headlines', key: 'jar_label', values: { name: view.story.name, count: labels.length } },
      table: [],
      sure: [],
      notes: [
        ...(await unprintedNotes({ id: view.jar.id, name: view.story.name })),
        { group: 'notes', key: 'print_size', values: { count: labels.length } },
      ],
      cautions: dangerCautions([view.story]),
      actions: dangerActions(view, context),
      data: { ...jarBrief(view), bottlesMl: sizes },
      kitchen: kitchenOf({}),
      files: labels.map((data, index) =>
        pictureFile(`larderbell-label-${index + 1}.png`, { group: 'files', key: 'bottle_label', values: data }, (pen) =>
          bottleLabel(data, pen),
        ),
      ),
    }
  },
})
