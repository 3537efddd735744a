-- How far a team's passes along the ground find a gate, as its coach measured it on the field: two numbers of the team and
-- a day, nothing of any child. A team without a row has not been measured.
create table team_reach (
  club_id uuid not null,
  team_id uuid not null,
  -- From 3 to 60 m: outside these a number is a slip of the pen, such as centimetres (habit: common practice, no source).
  strong_foot_mm integer not null check (strong_foot_mm between 3000 and 60000),
  other_foot_mm integer not null check (other_foot_mm between 3000 and 60000),
  measured_on date not null check (measured_on between '2000-01-01' and '2100-12-31'),
  version integer not null check (version >= 1),
  primary key (club_id, team_id),
  foreign key (club_id, team_id) references team,
  check (other_foot_mm <= strong_foot_mm)
);

alter table team_reach enable row level security;
alter table team_reach force row level security;
create policy guard on team_reach as restrictive
  using (club_id = (select nullif(current_setting('app.club_id', true), '')::uuid))
  with check (club_id = (select nullif(current_setting('app.club_id', true), '')::uuid));
create policy use on team_reach to espalier_app using (true) with check (true);
grant select, insert on team_reach to espalier_app;
grant update (strong_foot_mm, other_foot_mm, measured_on, version) on team_reach to espalier_app;
