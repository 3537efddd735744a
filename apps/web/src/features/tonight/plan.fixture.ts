import { planEvening, type SessionPlan } from '@espalier/domain/session'
import { newEvening } from './evening'
import { eveningFacts, USUAL_PACE_MM } from './evening-facts'
import { exampleKit } from './kit.fixture'

const [date] = exampleKit.dates
if (date === undefined) throw new Error('the example kit holds an evening')

export const exampleDate = date
export const exampleEvening = newEvening(exampleKit, date)

const facts = eveningFacts(exampleKit, date, exampleEvening, USUAL_PACE_MM)
if (facts === null) throw new Error('the example kit holds a space')

export const exampleFacts = facts
/** The example kit's evening with everybody there. */
export const examplePlan: SessionPlan = planEvening(facts)
