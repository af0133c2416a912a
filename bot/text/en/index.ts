import type { Language } from '../language.ts'
import { putTogether } from '../put-together.ts'
import { againSentences } from './again.ts'
import { inAmerican } from './american.ts'
import { calculateSentences, liquidProblems, recipeProblems } from './calculate.ts'
import { commandTexts } from './commands.ts'
import { costProblems, costSentences } from './cost.ts'
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
import { emergencySentences } from './emergency.ts'
import { englishFormat } from './format.ts'
import { handbook } from './handbook/index.ts'
import { hazardSentences } from './hazards.ts'
import { helpText } from './help.ts'
import { dangerSentences } from './jar-danger.ts'
import { jarProblems } from './jar-problems.ts'
import { stepSentences } from './jar-steps.ts'
import { compareSentences, listSentences, notebookSentences, showSentences } from './jar-views.ts'
import { keepingSentences } from './keeping.ts'
import { byKind } from './kinds.ts'
import { labelProblems, labelSentences } from './label.ts'
import { measureSentences } from './measure.ts'
import { moreText } from './more.ts'
import { exportSentences } from './notebook-file.ts'
import { pictureSentences, pictureText } from './pictures.ts'
import { planSentences } from './plan.ts'
import { botanicalProblems, limitProblems, spiritProblems } from './plant-refusals.ts'
import { botanicalSentences } from './plants.ts'
import { chatProblems, planProblems, quantityProblems } from './problems.ts'
import { nudgeSentences, remindersSentences } from './reminders.ts'
import { servingSentences } from './serving.ts'
import { forgetSentences, settingsSentences } from './settings.ts'
import { codeProblems, codeSentences, shareProblems, shareSentences } from './share.ts'
import { shoppingProblems, shoppingSentences } from './shopping.ts'
import { sweetenerSentences } from './sweeteners.ts'
import { talkProblems, talkSentences } from './talk.ts'
import { consoleText, storageInDiscord, storageProblems } from './terminal.ts'
import { troubleProblems, troubleSentences } from './trouble.ts'

/** Every word a person reads, in English. */
export const en = {
  format: englishFormat,
  american: inAmerican,
  kinds: byKind,
  sentences: putTogether(
    calculateSentences,
    measureSentences,
    sweetenerSentences,
    servingSentences,
    labelSentences,
    planSentences,
    hazardSentences,
    botanicalSentences,
    settingsSentences,
    forgetSentences,
    remindersSentences,
    nudgeSentences,
    listSentences,
    showSentences,
    notebookSentences,
    compareSentences,
    againSentences,
    stepSentences,
    dangerSentences,
    exportSentences,
    codeSentences,
    shareSentences,
    pictureSentences,
    troubleSentences,
    keepingSentences,
    shoppingSentences,
    costSentences,
    emergencySentences,
    talkSentences,
  ),
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
    ...troubleProblems,
    ...costProblems,
    ...shoppingProblems,
    ...storageProblems,
    ...chatProblems,
    ...talkProblems,
    ...limitProblems,
  },
  /** In the place of those of the same key where others are. */
  problemsInDiscord: storageInDiscord,
  commands: commandTexts,
  console: consoleText,
  more: moreText,
  help: helpText,
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
  handbook,
} satisfies Language
