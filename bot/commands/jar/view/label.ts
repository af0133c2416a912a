import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { bottleLabel } from '../../../picture/label/bottle-label.ts'
import { bottleLabelData, bottleSizesOf } from '../../../picture/label/bottle-label-data.ts'
import { pictureFile } from '../../reply/picture-file.ts'
import { unprintedNotes } from '../../reply/unprinted-notes.ts'
import { dangerActions, dangerCautions } from '../known/jar-dangers.ts'
import { jarBrief } from '../known/jar-data.ts'
import { kitchenOfJar } from '../known/jar-kitchen.ts'
import { jarNamed } from '../known/jar-named.ts'
import { notedCautions } from '../known/noted-cautions.ts'
import { expectNothingTold } from '../known/told-trouble.ts'
import { expectKeeping } from '../step/already.ts'

/** Files of a reply. */
const MOST_LABELS = 10

export const jarLabelCommand = defineCommand({
  ...signature('jar label'),
  topic: 'jars',
  async run(input, context) {
    const view = await jarNamed(input.jar.is, context)
    expectNothingTold(view.story)
    expectKeeping('jar label', 'label_ferments', view.story, input, context.settings)
    const sizes = bottleSizesOf(view).slice(0, MOST_LABELS)
    const labels = (sizes.length === 0 ? [null] : sizes).map((volumeMl) =>
      bottleLabelData(view, volumeMl, input.by?.is ?? null),
    )
    return {
      headline: { group: 'headlines', key: 'jar_label', values: { name: view.story.name, count: labels.length } },
      table: [],
      sure: [],
      notes: [
        ...(await unprintedNotes({ id: view.jar.id, name: view.story.name })),
        { group: 'notes', key: 'print_size', values: { count: labels.length } },
      ],
      cautions: [...dangerCautions([view.story]), ...notedCautions(view.story)],
      actions: dangerActions(view, context),
      data: { ...jarBrief(view), bottlesMl: sizes },
      kitchen: kitchenOfJar({}, view.story),
      files: labels.map((data, index) =>
        pictureFile(`larderbell-label-${index + 1}.png`, { group: 'files', key: 'bottle_label', values: data }, (pen) =>
          bottleLabel(data, pen),
        ),
      ),
    }
  },
})
