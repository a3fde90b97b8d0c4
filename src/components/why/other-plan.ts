// Figures of a plan that is not the open one: within it every "why?" is asked of that plan.

import { createContext } from 'preact'
import type { WhyContext } from '../../report/why'

export const OtherPlan = createContext<Omit<WhyContext, 'formats'> | null>(null)
