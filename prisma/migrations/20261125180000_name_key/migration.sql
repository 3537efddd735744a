-- Which key wraps the keys of the children's names, as a value that only that key can make. Whoever starts with another
-- key, as after a lost secrets file, is told so before anything is written that the old key could not open.
create table name_key_check (
  one boolean primary key default true check (one),
  mac bytea not null check (octet_length(mac) = 32)
);

-- Each process of the API looks before it serves. Only the migrations write it, once.
grant select on name_key_check to espalier_app;
