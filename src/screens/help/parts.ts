// The parts of the help in their order: first what is asked for and how it comes about, then the answers, then what it
// all rests on.

import type { ComponentType } from 'preact'
import { Answers } from './Answers'
import type { ContentsProps } from './contents-props'
import { Defaults } from './Defaults'
import { Filling } from './Filling'
import { Likely } from './Likely'
import { Limits } from './Limits'
import { LoadAlong } from './LoadAlong'
import { MainBody } from './MainBody'
import { Rules } from './Rules'
import { SafetyNotes } from './SafetyNotes'
import { Sources } from './Sources'
import { Words } from './Words'

interface HelpPart {
  id: string
  title: string
  figures: 'why' | 'typed' | 'cited'
  Contents: ComponentType<ContentsProps>
}

export const PARTS: readonly HelpPart[] = [
  { id: 'help-main-body', title: 'Main-body litres', figures: 'typed', Contents: MainBody },
  { id: 'help-load', title: 'The load along the trip', figures: 'why', Contents: LoadAlong },
  { id: 'help-filling', title: 'How items fill a pack', figures: 'why', Contents: Filling },
  { id: 'help-likely', title: '“Likely” and “9 of 10”', figures: 'why', Contents: Likely },
  { id: 'help-answers', title: 'The answers', figures: 'why', Contents: Answers },
  { id: 'help-rules', title: 'Water, food and time', figures: 'why', Contents: Rules },
  { id: 'help-defaults', title: 'What counts until you say', figures: 'cited', Contents: Defaults },
  { id: 'help-limits', title: 'What it cannot know', figures: 'cited', Contents: Limits },
  { id: 'help-safety', title: 'Safety notes', figures: 'cited', Contents: SafetyNotes },
  { id: 'help-words', title: 'Words', figures: 'cited', Contents: Words },
  { id: 'help-sources', title: 'Sources', figures: 'cited', Contents: Sources },
]
