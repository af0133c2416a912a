import { adjustCommand } from './adjust.ts'
import { blendCommand } from './blend.ts'
import { botanicalCommand } from './botanical.ts'
import { cautionsCommand } from './cautions.ts'
import { diluteCommand } from './dilute.ts'
import { calendarCommand } from './export/calendar.ts'
import { forgetCommand } from './forget.ts'
import { jarAddCommand } from './jar/add.ts'
import { againCommand } from './jar/again.ts'
import { jarBottleCommand } from './jar/bottle.ts'
import { jarCorrectCommand } from './jar/correct.ts'
import { jarDiscardCommand } from './jar/discard.ts'
import { jarEmptyCommand } from './jar/empty.ts'
import { jarFilterCommand } from './jar/filter.ts'
import { jarLabelCommand } from './jar/label.ts'
import { jarLaterCommand } from './jar/later.ts'
import { jarListCommand } from './jar/list.ts'
import { notebookCommand } from './jar/notebook.ts'
import { jarOpenCommand } from './jar/open.ts'
import { jarRenameCommand } from './jar/rename.ts'
import { jarShakeCommand } from './jar/shake.ts'
import { jarShowCommand } from './jar/show.ts'
import { jarStartCommand } from './jar/start.ts'
import { jarStrainCommand } from './jar/strain.ts'
import { jarSweetenCommand } from './jar/sweeten.ts'
import { jarTagCommand } from './jar/tag.ts'
import { jarTasteCommand } from './jar/taste.ts'
import { jarUndoCommand } from './jar/undo.ts'
import { labelCommand } from './label.ts'
import { mixCommand } from './mix.ts'
import { planCommand } from './plan.ts'
import { remindersCommand } from './reminders.ts'
import { servingCommand } from './serving.ts'
import { settingsCommand } from './settings.ts'
import { shareCommand } from './share/share.ts'
import { syrupCommand } from './syrup.ts'

/** Every command, in the order in which help lists them: the one list that all surfaces read. */
export const commands = [
  planCommand,
  syrupCommand,
  mixCommand,
  diluteCommand,
  blendCommand,
  adjustCommand,
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
  jarBottleCommand,
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
