import { limitProblems } from './botanical/limit-words.ts'
import { botanicalProblems } from './botanical-problems.ts'
import { chatProblems } from './chat-problems.ts'
import { commandTexts } from './command-texts.ts'
import { connectionText } from './connection.ts'
import { consoleText } from './console.ts'
import { discordText } from './discord.ts'
import { callText } from './discord-calls.ts'
import { doctorText } from './doctor.ts'
import { englishFormat } from './format.ts'
import { jarProblems } from './jar/jar-problems.ts'
import { labelProblems } from './label/label-problems.ts'
import { liquidProblems } from './liquid-problems.ts'
import { pictureText } from './picture/picture-text.ts'
import { planProblems } from './plan/plan-problems.ts'
import { quantityProblems } from './quantity-problems.ts'
import { recipeProblems } from './recipe-problems.ts'
import {
  bottlingFormText,
  makeFormText,
  registrationText,
  retypeFormText,
  strainingFormText,
  suggestionText,
  sweeteningFormText,
  tastingFormText,
} from './registration.ts'
import { seasonText } from './season.ts'
import { sentences } from './sentences.ts'
import { codeProblems } from './share/code-problems.ts'
import { shareProblems } from './share/share-problems.ts'
import { spiritProblems } from './spirit-problems.ts'
import { storageInDiscord, storageProblems } from './storage-problems.ts'

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
