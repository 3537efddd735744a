import { expect, type Page } from '@playwright/test'

type PatternWish = {
  readonly title: string
  readonly problem: string
  readonly format: string
  readonly ageGroup: string
  readonly side: string
  /** Who gets the ball, step by step; the goalkeeper begins. */
  readonly receivers: readonly string[]
  /** Who runs while the ball is played, by the step's number. */
  readonly runners: Readonly<Record<number, string>>
}

/** Writes a new pattern with the forms and saves it. */
export async function writePattern(page: Page, wish: PatternWish): Promise<void> {
  await page.getByRole('link', { name: 'Write a pattern' }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'A new pattern' })).toBeVisible()
  await page.getByLabel('Title').fill(wish.title)
  await page.getByLabel('The problem it answers').fill(wish.problem)
  await page.getByLabel('Game').selectOption({ label: wish.format })
  await page.getByLabel('Age group').selectOption(wish.ageGroup)
  await page.getByLabel('Written for').selectOption({ label: wish.side })
  for (const [index, receiver] of wish.receivers.entries()) {
    if (index > 0) await page.getByRole('button', { name: 'Add a step' }).click()
    const form = page.getByRole('group', { name: `Step ${index + 1}` })
    await form.getByLabel('Who gets it').selectOption(receiver)
    const runner = wish.runners[index + 1]
    if (runner === undefined) continue
    await form.getByRole('button', { name: 'Add a run' }).click()
    await form.getByLabel('Who runs').selectOption(runner)
  }
  await expect(page.getByRole('list', { name: 'Script' }).locator('> li')).toHaveCount(wish.receivers.length)
}

export async function savePattern(page: Page, version: number): Promise<void> {
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByText(`Version ${version} is saved.`)).toBeVisible()
}

export async function writeTeaching(page: Page, about: string): Promise<void> {
  const texts: readonly (readonly [string, string])[] = [
    ['Why', `The press leaves somebody free ${about}.`],
    ['What good looks like', 'The next one is open before the ball comes.'],
    ['Mistake 1: what is seen', 'The ball comes behind the receiver'],
    ['Mistake 1: what to change', 'Play it to the front foot'],
    ['Mistake 2: what is seen', 'Everybody stands and watches'],
    ['Mistake 2: what to change', 'Move as soon as it is played'],
    ['One question to ask', 'Who is free when two come at us?'],
    ['When it is time to go long', 'When nobody near is free and they stand high.'],
    ['Easier', 'A longer space with the same cones.'],
    ['Harder', 'One touch in the middle.'],
  ]
  for (const [label, text] of texts) await page.getByLabel(label, { exact: true }).fill(text)
  await page.getByLabel('Call words').fill('turn, set')
  await expect(page.getByText('Everything a coach needs is written.')).toBeVisible()
}

type CurriculumWish = { readonly name: string; readonly ageGroup: string; readonly format: string }

export async function beginCurriculum(page: Page, wish: CurriculumWish): Promise<void> {
  await page.getByLabel('Name').fill(wish.name)
  await page.getByLabel('Age group').selectOption(wish.ageGroup)
  await page.getByLabel('Game').selectOption({ label: wish.format })
  await page.getByRole('button', { name: 'Begin the draft' }).click()
  await expect(page.getByRole('heading', { level: 1, name: `Draft of ${wish.name}` })).toBeVisible()
}

export type StageWish = {
  readonly title: string
  readonly pattern: string
  readonly form: string
  readonly pressure: string
  readonly condition?: string
}

/** One progression of these stages, written from the first to the last. */
export async function writeProgression(page: Page, title: string, stages: readonly StageWish[]): Promise<void> {
  await page.getByRole('button', { name: 'Add a progression' }).click()
  await page.getByLabel('Title of the progression').fill(title)
  const progression = page.getByRole('group', { name: title })
  for (const [index, stage] of stages.entries()) {
    await progression.getByRole('button', { name: 'Add a stage' }).click()
    const line = progression.getByRole('listitem').nth(index)
    await line.getByLabel(`Title of stage ${index + 1}`).fill(stage.title)
    await line.getByLabel('Pattern').selectOption({ label: stage.pattern })
    await line.getByLabel('How much of it').selectOption({ label: stage.form })
    await line.getByLabel('Against what').selectOption({ label: stage.pressure })
    if (stage.condition !== undefined) await line.getByLabel(/^Conditions/).fill(stage.condition)
  }
}

export type ActivityWish = {
  readonly kind: string
  readonly title: string
  readonly minutes: number
  readonly points?: string
}

export async function writeModelSession(page: Page, title: string, activities: readonly ActivityWish[]): Promise<void> {
  await page.getByRole('button', { name: 'Add a model session' }).click()
  await page.getByLabel('Title of the session').fill(title)
  const session = page.getByRole('group', { name: title })
  for (const [index, activity] of activities.entries()) {
    await session.getByRole('button', { name: 'Add an activity' }).click()
    const line = session.getByRole('listitem').filter({ has: page.getByLabel(`Title of activity ${index + 1}`) })
    await line.getByLabel(`Title of activity ${index + 1}`).fill(activity.title)
    await line.getByLabel('Kind of activity').selectOption({ label: activity.kind })
    await line.getByLabel('Minutes').selectOption({ label: `${activity.minutes} min` })
    if (activity.points !== undefined) await line.getByLabel(/^Coaching points/).fill(activity.points)
  }
}

/** Presses publish, reads what it will do, and presses once more. */
export async function publish(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Publish version 1' }).click()
  const dialog = page.getByRole('dialog', { name: `Publish version 1 of “${name}”?` })
  await expect(dialog.getByText(/^Version 1 of .* will hold/)).toBeVisible()
  await dialog.getByRole('button', { name: 'Publish version 1' }).click()
}
