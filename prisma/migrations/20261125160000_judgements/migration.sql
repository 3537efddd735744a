-- What a coach can say at the end of an evening without having counted: how often the pattern got out. Attempts and
-- successes stay empty where nobody counted, so that a judgement never passes for a count.

alter table stage_done add column got_out text check (got_out in ('none', 'some', 'half', 'most'));

-- Readiness of a process: it compares the migrations it was built with to those of the database.
grant select on schema_migration to espalier_app;

-- A block of rounds with one line-up is what evens out over weeks, so blocks are what is counted.
alter table player_rounds rename to player_blocks;
alter table player_blocks rename column rounds to blocks;
