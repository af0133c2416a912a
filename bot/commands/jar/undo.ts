import { z } from 'zod'
import { effective } from '../../../core/jar/effective.ts'
import { findJar } from '../../../core/jar/find-jar.ts'
import { undo } from '../../../core/jar/record.ts'
import { storyOf } from '../../../core/jar/story.ts'
import { defineCommand } from '../../chat/command.ts'
import { kitchenOf } from '../typed-in.ts'
import { change, typedIn, withJar } from './change-jar.ts'
import { jarData, undoneJarData } from './jar-data.ts'
import { jarFields } from './jar-fields.ts'
import { viewOf } from './jar-view.ts'
import { lateDay, nextRows, nowRows } from './step-reply.ts'

export const jarUndoCommand = defineCommand({
  path: 'jar undo',
  input: z.object({ jar: jarFields.jar }),
  async run(input, context) {
    const { nowMs, zone } = context
    const { jar, undone, name, stood } = await change(context, (person) => {
      const found = findJar(input.jar.is, person.jars)
      const before = storyOf(found.entries)!
      const { entries, undone: last } = undo(found.entries, { enteredMs: nowMs, typed: typedIn(input), zone })
      const changed = { ...found, entries }
      // As it stood with its corrections; a correction itself is no happening.
      const happening = effective(found.entries).find(({ seq }) => seq === last.seq) ?? null
      const made = { jar: changed, undone: last, name: before.name, stood: happening }
      return { person: withJar(person, changed), made }
    })
    const view = viewOf(jar, context)
    return {
      headline:
        view === null
          ? { group: 'headlines', key: 'jar_gone', values: { name } }
          : {
              group: 'headlines',
              key: 'jar_undone',
              values: { name, happening: stood, day: lateDay(stood ?? undone, context) },
            },
      table: view === null ? [] : [...nextRows(view, context), ...nowRows(view)],
      sure: [],
      notes: [],
      cautions: [],
      actions: [],
      data: view === null ? undoneJarData(jar) : jarData(view),
      kitchen: kitchenOf(input),
    }
  },
})
