#!/bin/bash
# Runs a shop as docs/how-to/run-a-shop.md says: a server with TLS, an owner, a bench that may read and add alone, a backup, a
# restore, a replica. Needs PostgreSQL's own programs and openssl. Run from the project's root, as root or as postgres:
#   RINGOUT=target/ringout src/bench/shop.sh
set -eu
ringout=${RINGOUT:-target/ringout}
bin=$(ls -d /usr/lib/postgresql/*/bin | tail -1)
port=${PORT:-54329}
folder=$(mktemp -d)
chmod 755 "$folder"
as() { if [ "$(id -u)" = 0 ]; then setpriv --reuid=postgres --regid=postgres --clear-groups -- "$@"; else "$@"; fi; }
[ "$(id -u)" = 0 ] && chown postgres "$folder"
cd_root=$(pwd)
trap 'cd /; as "$bin/pg_ctl" -D "$folder/replica" -m fast stop >/dev/null 2>&1 || true; as "$bin/pg_ctl" -D "$folder/data" -m fast stop >/dev/null 2>&1 || true; rm -rf "$folder"' EXIT
trap 'exit 1' INT TERM
say() { echo; echo "== $*"; }

say "server with TLS"
as openssl req -new -x509 -days 30 -nodes -subj "/CN=shop root" -keyout "$folder/root.key" -out "$folder/root.crt" 2>/dev/null
as openssl req -new -nodes -subj "/CN=localhost" -keyout "$folder/server.key" -out "$folder/server.csr" 2>/dev/null
as openssl x509 -req -in "$folder/server.csr" -days 30 -CA "$folder/root.crt" -CAkey "$folder/root.key" -CAcreateserial -out "$folder/server.crt" 2>/dev/null
echo super > "$folder/super"; chmod 644 "$folder/super"
as "$bin/initdb" -D "$folder/data" -U postgres -A scram-sha-256 --pwfile="$folder/super" -E UTF8 --no-locale >/dev/null
as cp "$folder/server.crt" "$folder/server.key" "$folder/data/"
as bash -c "printf '%s\n' \"ssl = on\" \"listen_addresses = 'localhost'\" \"port = $port\" \"unix_socket_directories = '$folder'\" >> '$folder/data/postgresql.conf'
printf '%s\n' 'local all postgres scram-sha-256' 'hostssl all all all scram-sha-256' 'hostssl replication all all scram-sha-256' > '$folder/data/pg_hba.conf'"
as "$bin/pg_ctl" -D "$folder/data" -w -l "$folder/log" start >/dev/null

say "owner, bench, database"
export PGPASSWORD=super
"$bin/psql" -q -h localhost -p "$port" -U postgres -c "create role ringout_owner login password 'own er'" -c "create role bench login password 'b:ench'" -c "create role mirror login replication password 'mirror'" -c "create database ringout owner ringout_owner"
tls="?sslmode=verify-full&sslrootcert=$folder/root.crt"
export RINGOUT_STORE="postgresql://localhost:$port/ringout$tls"
PGUSER=ringout_owner PGPASSWORD="own er" $ringout store migrate --role bench

say "a bench adds and reads"
export PGUSER=bench PGPASSWORD=b:ench
sample=harness-samples/swing-bridge
$ringout store add $sample/junction-box.xlsx $sample/point-to-point.xlsx $sample/point-to-point-clean.xlsx $sample/point-to-point-values.xlsx
$ringout units
$ringout check unit:0417 | head -1
for sql in "update entry set body = ''" "delete from entry" "truncate entry" "drop table entry"; do
  if "$bin/psql" -q "host=localhost port=$port dbname=ringout user=bench sslmode=require" -c "$sql" 2>&1 | grep -q "permission denied\|must be owner"; then echo "refused: $sql"; else echo "NOT REFUSED: $sql"; exit 1; fi
done
say "without TLS nobody comes in"
code=0; RINGOUT_STORE="postgresql://localhost:$port/ringout?sslmode=disable" $ringout units || code=$?; [ $code = 66 ]
code=0; RINGOUT_STORE="postgresql://127.0.0.1:$port/ringout$tls" $ringout units || code=$?; [ $code = 66 ]
say "a password in ~/.pgpass"
mkdir "$folder/home"; echo "localhost:$port:ringout:bench:b\\:ench" > "$folder/home/.pgpass"; chmod 600 "$folder/home/.pgpass"
(unset PGPASSWORD; PGPASSFILE="$folder/home/.pgpass" $ringout store check | head -1)

say "backup and restore"
$ringout store check | tee "$folder/before"
$ringout store backup "$folder/backup.db"
PGPASSWORD=super "$bin/pg_dump" -h localhost -p "$port" -U postgres -Fc -f "$folder/backup.dump" ringout
PGPASSWORD=super "$bin/psql" -q -h localhost -p "$port" -U postgres -c "create database restored owner ringout_owner" -c "create database copied owner ringout_owner"
PGPASSWORD=super "$bin/pg_restore" -h localhost -p "$port" -U postgres -d restored "$folder/backup.dump"
$ringout store check --store "postgresql://localhost:$port/restored$tls" > "$folder/after"
diff <(grep -A9 Digest "$folder/before") <(grep -A9 Digest "$folder/after") && echo "restored: the same digest"
PGUSER=ringout_owner PGPASSWORD="own er" $ringout store migrate --role bench --store "postgresql://localhost:$port/copied$tls"
$ringout store copy "$folder/backup.db" "postgresql://localhost:$port/copied$tls"

say "keys: made, listed, withdrawn, checked"
echo "four lamps on a bridge" > "$folder/passphrase"
$ringout people add "Maren Lindqvist" --role administrator --passphrase "$folder/passphrase" --who "Maren Lindqvist"
$ringout people add "Katarina Novak" --role inspector --passphrase "$folder/passphrase" --who "Maren Lindqvist"
$ringout report --new-key "$folder/katarina.key" --passphrase "$folder/passphrase"
$ringout people key "Katarina Novak" --key "$folder/katarina.key.pub" --who "Maren Lindqvist"
$ringout people keys -o "$folder/keys.txt"
code=0; $ringout report unit:0417 -o "$folder/record.html" --seal "$folder/katarina.key" --passphrase "$folder/passphrase" || code=$?; [ $code -le 2 ]
$ringout report --verify "$folder/record.html" --keys "$folder/keys.txt" | grep "Katarina Novak"
print=$(cut -f 3 "$folder/keys.txt" | tail -1)
$ringout people withdraw-key "$print" --why "tablet lost" --who "Maren Lindqvist"
$ringout people keys -o "$folder/keys.txt" --force
$ringout report --verify "$folder/record.html" --keys "$folder/keys.txt" | grep "good at its time"

say "a bench that is served, stopped, and has its certificate renewed"
fingerprint() {
  XDG_DATA_HOME="$folder/bench" $ringout bench --listen "localhost:$((port + 2))" --station "bench 1" --no-browser < /dev/null > "$folder/bench.log" 2>&1 &
  bench=$!
  for i in $(seq 120); do grep -q "^Valid until" "$folder/bench.log" && break; sleep 1; done
  grep -q "^Valid until" "$folder/bench.log" || { cat "$folder/bench.log" >&2; exit 1; }
  openssl s_client -connect "localhost:$((port + 2))" < /dev/null 2>/dev/null | openssl x509 -noout -fingerprint -sha256
  kill -TERM $bench; code=0; wait $bench || code=$?; [ $code = 143 ]
}
fingerprint > "$folder/one"
fingerprint > "$folder/same"
cmp "$folder/one" "$folder/same"
rm -r "$folder/bench/ringout/tls"
fingerprint > "$folder/other"
if cmp -s "$folder/one" "$folder/other"; then echo "NOT RENEWED"; exit 1; fi
echo "another certificate after the renewal"

if command -v systemd-analyze > /dev/null; then
  say "the unit of systemd"
  awk '/```ini/{f=1;next}/```/{f=0}f' docs/how-to/run-a-shop.md | sed 's|/opt/ringout/ringout|/bin/true|' > "$folder/ringout-bench.service"
  systemd-analyze verify "$folder/ringout-bench.service"
fi

say "replica"
as env HOME="$folder" PGPASSWORD=mirror PGSSLMODE=require "$bin/pg_basebackup" -h localhost -p "$port" -U mirror -D "$folder/replica" -c fast -R
as bash -c "echo 'port = $((port + 1))' >> '$folder/replica/postgresql.conf'"
as "$bin/pg_ctl" -D "$folder/replica" -w -l "$folder/replica.log" start >/dev/null
$ringout units --store "postgresql://localhost:$((port + 1))/ringout$tls" | head -1
code=0; $ringout store add $sample/junction-box.xlsx $sample/point-to-point --store "postgresql://localhost:$((port + 1))/ringout$tls" || code=$?; [ $code = 73 ]

say "the server goes away half way"
as "$bin/pg_ctl" -D "$folder/data" -m immediate stop >/dev/null
code=0; $ringout units || code=$?; [ $code = 66 ]
as "$bin/pg_ctl" -D "$folder/data" -w -l "$folder/log" start >/dev/null
$ringout store check | head -1
echo "all as the page says"
