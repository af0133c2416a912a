import { liquidProblems, recipeProblems } from './calculate.ts'
import { commandTexts } from './commands.ts'
import { seasonText } from './demo.ts'
import {
  bottlingFormText,
  callText,
  connectionText,
  discordText,
  makeFormText,
  registrationText,
  retypeFormText,
  strainingFormText,
  suggestionText,
  sweeteningFormText,
  tastingFormText,
} from './discord.ts'
import { doctorText } from './doctor.ts'
import { englishFormat } from './format.ts'
import { jarProblems } from './jar-problems.ts'
import { labelProblems } from './label.ts'
import { pictureText } from './pictures.ts'
import { botanicalProblems, limitProblems, spiritProblems } from './plant-refusals.ts'
import { chatProblems, planProblems, quantityProblems } from './problems.ts'
import { sentences } from './sentences.ts'
import { codeProblems, shareProblems } from './share.ts'
import { consoleText, storageInDiscord, storageProblems } from './terminal.ts'
/** Every word a person reads in English. Another language is another folder of the same shape. */
export const en = {
  format: englishFormat,
  sentences,
  problems: {
    ...quantityProblems,
    ...liquidProblems,
    ...recipeProblems,
    ...planProblems,
    ...codeProblems,
    ...shareProblems,
    ...botanicalProblems,
    ...spiritProblems,
    ...labelProblems,
    ...jarProblems,
    ...storageProblems,
    ...chatProblems,
    ...limitProblems,
  },
  /** In the place of those of the same key where others are. */
  problemsInDiscord: storageInDiscord,
  commands: commandTexts,
  console: consoleText,
  season: seasonText,
  doctor: doctorText,
  discord: discordText,
  calls: callText,
  connection: connectionText,
  registration: registrationText,
  suggestions: suggestionText,
  tastingForm: tastingFormText,
  strainingForm: strainingFormText,
  sweeteningForm: sweeteningFormText,
  bottlingForm: bottlingFormText,
  makeForm: makeFormText,
  retypeForm: retypeFormText,
  pictures: pictureText,
}
