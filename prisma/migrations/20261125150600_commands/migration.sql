-- What makes a command safe to repeat, and what was refused.

create table idempotency (
  club_id uuid not null,
  account_id uuid not null,
  key uuid not null,
  -- SHA-256 of method, path and canonical body: the same key with another body is refused.
  fingerprint bytea not null check (octet_length(fingerprint) = 32),
  status smallint check (status between 200 and 299),
  -- Only {id, version, entry}: a stored answer never holds a name.
  result jsonb,
  at timestamptz not null default now(),
  primary key (club_id, account_id, key),
  check ((status is null) = (result is null))
);
-- Kept for 90 days; afterwards the thing's own key still refuses it twice.
create index idempotency_age on idempotency (club_id, at);

-- Operations that a phone sent and the club refused, kept by a transaction of their own after the rollback.
create table refused (
  club_id uuid not null,
  operation_id uuid not null,
  account_id uuid not null,
  code text not null,
  sealed_body bytea,
  at timestamptz not null default now(),
  primary key (club_id, operation_id)
);
