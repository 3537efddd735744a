import { test } from '@playwright/test'
import { visitors } from './first-evening/story'
import { walkAdministrator } from './first-evening/walk-administrator'
import { walkAuditor } from './first-evening/walk-auditor'
import { walkCoaches } from './first-evening/walk-coaches'
import { walkDirector } from './first-evening/walk-director'
import { walkHidden } from './first-evening/walk-hidden'
import { walkNames } from './first-evening/walk-names'

// One club from nothing to a proof. Each walk goes on where the one before has ended.
test.describe.configure({ mode: 'serial' })

test.afterEach(() => {
  for (const visitor of visitors.values()) visitor.expectNoFaults()
})

test.afterAll(async () => {
  for (const visitor of visitors.values()) await visitor.leave()
})

walkAdministrator()
walkDirector()
walkCoaches()
walkAuditor()
walkHidden()
walkNames()
