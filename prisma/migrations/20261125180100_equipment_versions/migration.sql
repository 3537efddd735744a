-- Two who count at once: the second says which counting it saw. All kinds of one owner are written together and carry
-- the same version; an owner without rows has never been counted and stands at zero.
alter table equipment add column version integer not null default 1 check (version >= 1);
alter table equipment alter column version drop default;
grant update (version) on equipment to espalier_app;
