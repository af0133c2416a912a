import { adjustCommand } from './calculate/adjust.ts'
import { blendCommand } from './calculate/blend.ts'
import { diluteCommand } from './calculate/dilute.ts'
import { mixCommand } from './calculate/mix.ts'
import { servingCommand } from './calculate/serving.ts'
import { syrupCommand } from './calculate/syrup.ts'
import { againCommand } from './jar/amend/again.ts'
import { jarCorrectCommand } from './jar/amend/correct.ts'
import { jarUndoCommand } from './jar/amend/undo.ts'
import { jarAddCommand } from './jar/record/add.ts'
import { jarBottleCommand } from './jar/record/bottle.ts'
import { bottlesCommand } from './jar/record/bottles.ts'
import { jarCombineCommand } from './jar/record/combine.ts'
import { jarDiscardCommand } from './jar/record/discard.ts'
import { jarEmptyCommand } from './jar/record/empty.ts'
import { jarFilterCommand } from './jar/record/filter.ts'
import { jarLaterCommand } from './jar/record/later.ts'
import { jarNoteCommand } from './jar/record/note.ts'
import { jarOpenCommand } from './jar/record/open.ts'
import { jarRenameCommand } from './jar/record/rename.ts'
import { jarShakeCommand } from './jar/record/shake.ts'
import { jarSplitCommand } from './jar/record/split.ts'
import { jarStartCommand } from './jar/record/start.ts'
import { jarStrainCommand } from './jar/record/strain.ts'
import { jarSweetenCommand } from './jar/record/sweeten.ts'
import { jarTakeOutCommand } from './jar/record/take-out.ts'
import { jarTasteCommand } from './jar/record/taste.ts'
import { jarLabelCommand } from './jar/view/label.ts'
import { jarListCommand } from './jar/view/list.ts'
import { notebookCommand } from './jar/view/notebook.ts'
import { jarShowCommand } from './jar/view/show.ts'
import { jarTagCommand } from './jar/view/tag.ts'
import { labelCommand } from './label/label.ts'
import { measureCommand } from './measure/measure.ts'
import { calendarCommand } from './notebook-file/calendar.ts'
import { forgetCommand } from './person/forget.ts'
import { remindersCommand } from './person/reminders.ts'
import { settingsCommand } from './person/settings.ts'
import { planCommand } from './plan/plan.ts'
import { botanicalCommand } from './plants/botanical.ts'
import { cautionsCommand } from './plants/cautions.ts'
import { shareCommand } from './share/share.ts'
import { costCommand } from './shopping/cost.ts'
import { shoppingCommand } from './shopping/shopping.ts'
import { keepingCommand } from './trouble/keeping.ts'
import { troubleCommand } from './trouble/trouble.ts'

/** Every command, in the order in which help lists them: the one list that all surfaces read. */
export const commands = [
  planCommand,
  syrupCommand,
  mixCommand,
  diluteCommand,
  blendCommand,
  adjustCommand,
  measureCommand,
  troubleCommand,
  keepingCommand,
  shoppingCommand,
  costCommand,
  servingCommand,
  labelCommand,
  botanicalCommand,
  cautionsCommand,
  settingsCommand,
  remindersCommand,
  jarListCommand,
  jarStartCommand,
  jarShakeCommand,
  jarTasteCommand,
  jarAddCommand,
  jarStrainCommand,
  jarSweetenCommand,
  jarFilterCommand,
  jarTakeOutCommand,
  jarSplitCommand,
  jarCombineCommand,
  jarNoteCommand,
  jarBottleCommand,
  bottlesCommand,
  jarOpenCommand,
  jarEmptyCommand,
  jarDiscardCommand,
  jarRenameCommand,
  jarLaterCommand,
  jarCorrectCommand,
  jarUndoCommand,
  jarShowCommand,
  jarTagCommand,
  jarLabelCommand,
  notebookCommand,
  calendarCommand,
  shareCommand,
  againCommand,
  forgetCommand,
] as const
