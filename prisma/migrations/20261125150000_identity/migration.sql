-- Who is signed in, outside every club; only espalier_identity reads it. The roles themselves belong to the whole
-- server and are made before the first migration, together with their passwords.

create schema identity;

-- E-mail comes with its own sign-in; until then an account is known by the membership that names it.
create table identity.account (
  account_id uuid primary key,
  email text,
  email_key bytea unique,
  disabled_at timestamptz,
  check ((email is null) = (email_key is null))
);

create table identity.login (
  token_hash bytea primary key check (octet_length(token_hash) = 32),
  account_id uuid not null references identity.account,
  family_id uuid not null,
  kind text not null check (kind in ('browser', 'phone')),
  successor_hash bytea check (octet_length(successor_hash) = 32),
  idle_until timestamptz not null,
  ends_at timestamptz not null,
  -- The last strong proof of who this is, for questions asked again before something grave.
  strong_at timestamptz,
  revoked_at timestamptz,
  check (idle_until <= ends_at)
);
-- Signing out everywhere and disabling an account walk the live logins of one account.
create index login_live on identity.login (account_id) where revoked_at is null;

-- Which clubs to offer after signing in. It gives no rights: the membership inside the club does.
create table identity.directory (
  account_id uuid not null references identity.account,
  club_id uuid not null,
  primary key (account_id, club_id)
);
