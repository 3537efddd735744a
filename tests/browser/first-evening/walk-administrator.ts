import { expect, test } from '@playwright/test'
import { sharedEspalier } from '../espalier-of-walks'
import { makeEmptyClub } from '../start-espalier'
import { type Visitor, visit } from '../visitor'
import {
  addPerson,
  addSeason,
  addSlotToday,
  addTeam,
  countEquipment,
  goFromHome,
  measureHalf,
  previewSquad,
  sendSquad,
} from './administrator'
import {
  BARE_HALF,
  CLUB,
  LINED_HALF,
  ODD_CORNER,
  PEOPLE,
  RIVER,
  RIVER_CSV,
  RIVER_SQUAD,
  SPARKS,
  SPARKS_BAD_ROWS,
  SPARKS_CSV,
  SPARKS_SQUAD,
} from './invented'
import { day, links, type Role, visitors } from './story'

/** From nothing to people, teams, spaces, slots and squads. */
export function walkAdministrator(): void {
  test.describe('the administrator', () => {
    let admin: Visitor

    test('signs in to an empty club by pressing once', async ({ browser }) => {
      const link = await makeEmptyClub(sharedEspalier(), { name: CLUB, zone: day.zone, person: PEOPLE.administrator })
      links.set('administrator', link)
      admin = await visit(browser)
      visitors.set('administrator', admin)
      await admin.page.goto(link)
      await admin.lookAround()
      await admin.page.getByRole('button', { name: 'Sign in', exact: true }).click()
      await expect(admin.page.getByRole('heading', { name: 'Where to?' })).toBeVisible()
      await expect(admin.page.getByRole('heading', { name: CLUB })).toBeVisible()
      await admin.lookAround()
    })

    test('makes the season and two teams', async () => {
      const { page } = admin
      await addSeason(page, day)
      await addTeam(page, { name: SPARKS, ageGroup: 'U9', category: 'girls', format: '7v7' })
      await addTeam(page, { name: RIVER, ageGroup: 'U11', category: 'mixed', format: '9v9' })
      await admin.lookAround()
    })

    test('measures halves: one wider than long, one with lines and a goal, one out of every range; all are kept', async () => {
      const { page } = admin
      await goFromHome(page, 'Spaces and equipment')
      await measureHalf(page, { ...BARE_HALF, format: '7v7', lines: 'not there', ownGoal: '' })
      await measureHalf(page, { ...LINED_HALF, format: '9v9', lines: 'painted', ownGoal: '5.5' })
      await measureHalf(page, { ...ODD_CORNER, format: '7v7', lines: 'not there', ownGoal: '' })
      await countEquipment(page, { Cones: 36, Poles: 2, 'Small goals': 4, Balls: 11, Bibs: 9 })
      await admin.lookAround()
      await page.getByRole('link', { name: `${BARE_HALF.venue}, ${BARE_HALF.name}` }).click()
      await expect(page.getByRole('heading', { level: 1, name: /Change/ })).toBeVisible()
      await expect(page.getByText('The space is wider (38.5 m) than long')).toBeVisible()
      await admin.lookAround()
      await goFromHome(page, 'Spaces and equipment')
      await page.getByRole('link', { name: `${ODD_CORNER.venue}, ${ODD_CORNER.name}` }).click()
      for (const said of [
        /^The length of the pitch this is half of is 38.0 m; .* at least/,
        /^The width is 52.0 m; .* at most/,
      ])
        await expect(page.getByText(said)).toBeVisible()
    })

    test('gives both teams a weekly slot and imports the squads, with every bad row named', async () => {
      const { page } = admin
      for (const [team, start, minutes, space] of [
        [SPARKS, '04:45', 65, BARE_HALF],
        [RIVER, '04:30', 80, LINED_HALF],
      ] as const) {
        await goFromHome(page, 'Teams and seasons')
        await page.getByRole('link', { name: team }).click()
        await expect(page.getByRole('heading', { level: 1, name: team })).toBeVisible()
        // Days after the season are no fault of a slot: they become no dates, and that is said.
        const until = team === SPARKS ? { until: day.afterSeason } : {}
        await addSlotToday(page, day, { start, minutes, space: `${space.venue}, ${space.name}`, ...until })
        await expect(page.getByRole('table', { name: 'Next training dates' }).getByRole('row')).not.toHaveCount(1)
        await page.getByRole('link', { name: 'Open the squad' }).click()
        await expect(page.getByRole('heading', { level: 1, name: `Squad of ${team}` })).toBeVisible()
        await previewSquad(page, team === SPARKS ? SPARKS_CSV : RIVER_CSV)
        if (team === SPARKS) {
          await expect(page.getByRole('alert').getByRole('listitem')).toHaveText([...SPARKS_BAD_ROWS])
          await expect(page.getByText('Not kept, and not sent: birthday.')).toBeVisible()
          await admin.lookAround()
        }
        const squad = team === SPARKS ? SPARKS_SQUAD : RIVER_SQUAD
        await sendSquad(page, squad.length)
        const children = page.getByRole('table', { name: 'Children of the squad' })
        for (const child of squad) await expect(children.getByRole('rowheader', { name: child })).toBeVisible()
      }
    })

    test('adds the people, and each gets a link to pass on', async () => {
      const { page } = admin
      await goFromHome(page, 'People')
      const wishes: readonly (readonly [Role, RegExp])[] = [
        ['director', /^Technical director/],
        ['coach', new RegExp(`^Coach of ${SPARKS}`)],
        ['otherCoach', new RegExp(`^Coach of ${RIVER}`)],
        ['assistant', new RegExp(`^Assistant of ${SPARKS}`)],
        ['auditor', /^Auditor/],
      ]
      for (const [role, words] of wishes) links.set(role, await addPerson(page, PEOPLE[role], [words]))
      expect(new Set(links.values()).size).toBe(links.size)
      await admin.lookAround()
      await page.getByRole('link', { name: `Change: ${PEOPLE.coach}` }).click()
      await expect(page.getByRole('heading', { level: 1, name: `Change ${PEOPLE.coach}` })).toBeVisible()
      await admin.lookAround()
    })
  })
}
