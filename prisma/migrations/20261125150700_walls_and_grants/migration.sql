-- The wall between clubs, and what each role may do. A new club table brings the same four statements in its own
-- migration; a test of the catalogue fails without them.

do $walls$
declare
  own constant text := 'club_id = (select nullif(current_setting(''app.club_id'', true), '''')::uuid)';
  club_table text;
begin
  foreach club_table in array array[
    'club', 'season', 'team', 'membership', 'member_role', 'sign_in_link', 'space', 'equipment', 'training_slot',
    'training_date', 'player', 'subject_key', 'attendance', 'attendance_past', 'player_rounds', 'ledger_entry',
    'ledger_head', 'ledger_node', 'checkpoint', 'pattern', 'pattern_version', 'curriculum', 'draft',
    'curriculum_version', 'version_signature', 'stage', 'version_stage', 'adoption', 'stage_planned', 'plan', 'attempt',
    'record', 'stage_done', 'plan_change', 'note', 'idempotency', 'refused'
  ] loop
    execute format('alter table %I enable row level security', club_table);
    execute format('alter table %I force row level security', club_table);
    -- Restrictive, so that no policy added later can open the wall by being ORed to it.
    execute format('create policy guard on %I as restrictive using (%s) with check (%s)', club_table, own, own);
    execute format('create policy use on %I to espalier_app using (true) with check (true)', club_table);
  end loop;
end
$walls$;

grant usage on schema identity to espalier_identity;

grant select, insert on identity.account to espalier_identity;
grant update (disabled_at, email, email_key) on identity.account to espalier_identity;
grant select, insert on identity.login to espalier_identity;
grant update (successor_hash, idle_until, strong_at, revoked_at) on identity.login to espalier_identity;
grant select, insert, delete on identity.directory to espalier_identity;

-- Every club table is read and added to; what may change or go is named below, and nothing else may.
grant select, insert on
  club, season, team, membership, member_role, sign_in_link, space, equipment, training_slot, training_date,
  player, subject_key, attendance, attendance_past, player_rounds, ledger_entry, ledger_head, ledger_node,
  pattern, pattern_version, curriculum, draft, curriculum_version, stage, version_stage, adoption, stage_planned,
  plan, attempt, record, stage_done, plan_change, note, idempotency, refused
to espalier_app;
grant select on checkpoint, version_signature to espalier_app;

grant update (name, zone, settings, version) on club to espalier_app;
grant update (name, first_day, last_day, version) on season to espalier_app;
grant update (season_id, name, age_group, category, format_id, helpers, version, retired_at) on team to espalier_app;
grant update (display_name, version, ended_at) on membership to espalier_app;
grant delete on member_role to espalier_app;
grant update (used_at, revoked_at) on sign_in_link to espalier_app;
grant update (name, venue, length_mm, width_mm, format_id, doc, version, retired_at) on space to espalier_app;
grant update (count), delete on equipment to espalier_app;
grant update (space_id, weekday, local_start, minutes, valid_from, valid_to, version) on training_slot to espalier_app;
grant update (space_id, starts_at, ends_at, local_date, week, state, sequence) on training_date to espalier_app;

grant update (team_id, shirt, name_sealed, home, stretch, goalkeeper, foot, version, left_at) on player to espalier_app;
grant delete on subject_key to espalier_app;
grant update (came, from_minute, to_minute, operation_id, received_at), delete on attendance to espalier_app;
grant delete on attendance_past to espalier_app;
grant update (rounds), delete on player_rounds to espalier_app;

grant update (size, peaks, root) on ledger_head to espalier_app;

grant update (title, format_id, version, retired_at) on pattern to espalier_app;
grant update (name, age_group) on curriculum to espalier_app;
grant update (version, based_on, doc, doc_schema), delete on draft to espalier_app;
grant update (offered, withdrawn_reason) on curriculum_version to espalier_app;
grant update (title) on stage to espalier_app;
grant update (closed_at) on stage_planned to espalier_app;

grant update (standing, confirmed_by) on record to espalier_app;
grant update (stands) on stage_done to espalier_app;
grant update (answer, answered_by) on plan_change to espalier_app;
grant update (salt, text, erased_at) on note to espalier_app;

grant update (status, result), delete on idempotency to espalier_app;
grant delete on refused to espalier_app;

-- The signer reads what it signs and adds signatures; it changes nothing.
create policy sign on curriculum_version for select to espalier_signer using (true);
create policy sign on version_signature to espalier_signer using (true) with check (true);
create policy sign on ledger_head for select to espalier_signer using (true);
create policy sign on checkpoint to espalier_signer using (true) with check (true);
grant select on curriculum_version, ledger_head to espalier_signer;
grant select, insert on version_signature, checkpoint to espalier_signer;
