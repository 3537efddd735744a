-- A year mistyped would plan three centuries of evenings: days stay within this century, seasons and slots within a
-- little more than a year (habit: common practice, no source).

alter table season add constraint season_days check (
  first_day >= '2000-01-01' and last_day <= '2100-12-31' and last_day between first_day and first_day + 400
);
alter table training_slot add constraint training_slot_days check (
  valid_from >= '2000-01-01' and valid_to <= '2100-12-31' and valid_to between valid_from and valid_from + 400
);

-- Which of an account's refused operations is the oldest, when one more than fits has been kept.
create index refused_by_account on refused (club_id, account_id, at);
