-- The record book: one append-only Merkle tree (RFC 6962 hashing) a club. Entries and nodes are inserted, never changed.

create table ledger_entry (
  club_id uuid not null,
  seq bigint not null check (seq >= 0),
  entry_id uuid not null,
  kind text not null,
  subject_id uuid not null,
  team_id uuid,
  actor_id uuid,
  at timestamptz not null,
  -- Exact canonical bytes (RFC 8785), so text and never jsonb.
  body text not null,
  -- The tree's node at level 0.
  leaf_hash bytea not null,
  primary key (club_id, seq),
  unique (club_id, entry_id),
  check (leaf_hash = sha256('\x00'::bytea || convert_to(body, 'UTF8')))
);
create index ledger_subject on ledger_entry (club_id, subject_id, seq);
create index ledger_team on ledger_entry (club_id, team_id, seq desc);

create table ledger_head (
  club_id uuid primary key references club,
  size bigint not null check (size >= 0),
  -- Roots of the complete subtrees from the left: as many as the size has one bits.
  peaks bytea[] not null,
  root bytea not null check (octet_length(root) = 32),
  check (cardinality(peaks) = bit_count(int8send(size)))
);

-- Complete subtrees only; the ragged right edge is hashed from them in memory.
create table ledger_node (
  club_id uuid not null,
  level smallint not null check (level between 1 and 62),
  idx bigint not null check (idx >= 0),
  hash bytea not null check (octet_length(hash) = 32),
  primary key (club_id, level, idx)
);

-- Signed copies of the head; only the signer adds them.
create table checkpoint (
  club_id uuid not null,
  size bigint not null check (size >= 0),
  root bytea not null check (octet_length(root) = 32),
  signed_note text not null,
  kid text not null,
  at timestamptz not null,
  primary key (club_id, size)
);
