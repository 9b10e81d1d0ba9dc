#!/usr/bin/env bash
# eng/postgres.sh COMMAND...: runs a command beside a PostgreSQL server of its own, made for it on the loopback and gone after it.
# The command finds the connection string in STRINGLINE_TEST_POSTGRES. Installs PostgreSQL from Debian's packages where it may.
set -uo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
. "$root/eng/setup.sh"
[ $# -gt 0 ] || fail "Usage: eng/postgres.sh COMMAND..."

find_bin() {
  local found
  found=$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | sort -V | tail -1)
  [ -n "$found" ] || found=$(dirname "$(command -v initdb 2>/dev/null)" 2>/dev/null)
  [ -x "$found/initdb" ] && [ -x "$found/pg_ctl" ] && echo "$found"
}

bin=$(find_bin) || bin=
if [ -z "$bin" ] && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
  echo "Installing postgresql-15 (the second database of the journal) ..." >&2
  { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends postgresql-15; } >/dev/null 2>&1
  bin=$(find_bin) || bin=
fi
[ -n "$bin" ] || fail "The tests of the journal need a PostgreSQL server (initdb and pg_ctl)." "Install it, for example: sudo apt-get install postgresql-15"

data=$(mktemp -d)
owner=
if [ "$(id -u)" = 0 ]; then
  owner="runuser -u postgres --"   # PostgreSQL refuses to run as root
  chown postgres: "$data"
fi
cd "$data" || exit 1
stop() { $owner "$bin/pg_ctl" -D "$data/data" -m fast -w stop >/dev/null 2>&1; rm -rf "$data"; }
trap stop EXIT
trap 'exit 130' INT TERM
$owner "$bin/initdb" -D "$data/data" -A trust -U app -E UTF8 --locale=C.UTF-8 --no-sync >"$data/initdb.log" 2>&1 ||
  fail "PostgreSQL's initdb failed:" "$(cat "$data/initdb.log")"

# Nothing of it outlives the tests, so it need not wait for the disk.
settings="-c listen_addresses=127.0.0.1 -c unix_socket_directories=$data -c fsync=off -c max_connections=60"
for _ in 1 2 3 4 5 6 7 8; do
  port=$((20000 + RANDOM % 12000))
  (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null && continue
  $owner "$bin/pg_ctl" -D "$data/data" -l "$data/log" -w -t 30 -o "$settings -c port=$port" start >/dev/null 2>&1 && break
  port=
done
[ -n "${port:-}" ] || fail "PostgreSQL does not start:" "$(cat "$data/log" 2>/dev/null)"

export STRINGLINE_TEST_POSTGRES="Host=127.0.0.1;Port=$port;Username=app;Database=postgres"
cd "$root" || exit 1
"$@"
