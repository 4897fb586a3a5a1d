#!/bin/bash
# Does word by word what docs/how-to/run-a-shop.md says, on this Debian machine with its own cluster of PostgreSQL 15, three benches and
# a tablet; only systemd's own start is left to a real machine. Nothing of it stays: the folders are overlays, the names a network of its own.
# As root, after mvn package:
#   unshare -mnpf --mount-proc --propagation private src/bench/shop-on-debian.sh target/ringout-0.1.0.zip
set -u
zip=$(realpath "${1:-target/ringout-0.1.0.zip}")
W=$(mktemp -d)
mount -t tmpfs tmpfs $W
for d in etc opt var/lib var/log root; do n=${d//\//_}; mkdir -p $W/$n.u $W/$n.w; mount -t overlay overlay -o lowerdir=/$d,upperdir=$W/$n.u,workdir=$W/$n.w /$d || echo NO OVERLAY $d; done
mount -t tmpfs tmpfs /run; mkdir -p /run/postgresql; chown postgres /run/postgresql
mkdir -p $W/backup
ip link set lo up
for a in 1 11 12 13; do ip addr add 10.9.0.$a/32 dev lo; done
printf '10.9.0.1 server\n10.9.0.11 bench1.shop\n10.9.0.12 bench2.shop\n10.9.0.13 bench3.shop\n' >> /etc/hosts
# A command as the page has it, and how it ends.
run() { echo "\$ $*"; "$@"; echo "   -> $?"; }
echo "== an empty machine"
run useradd --system --create-home --home-dir /var/lib/ringout --groups dialout ringout
run unzip -q "$zip" -d /opt
run ln -s /opt/ringout-0.1.0 /opt/ringout
run install -d -m 750 -g ringout /etc/ringout
ls -ld /etc/ringout /var/lib/ringout
pg_lsclusters
echo "== certificate"
D=/var/lib/postgresql/15/main
ls -ld $D
cat > $W/cert.sh <<'X'
cd /var/lib/postgresql/15/main || exit 1
set -x
openssl req -new -x509 -days 3650 -nodes -subj "/CN=shop root" -keyout root.key -out root.crt 2>/dev/null
openssl req -new -nodes -subj "/CN=server" -addext "subjectAltName=DNS:server" -keyout server.key -out server.csr 2>/dev/null
openssl x509 -req -in server.csr -days 397 -copy_extensions copy -CA root.crt -CAkey root.key -CAcreateserial -out server.crt
chmod 600 root.key server.key
X
chmod 755 $W; chmod 644 $W/cert.sh
run setpriv --reuid=postgres --regid=postgres --init-groups bash $W/cert.sh
cp $D/root.crt /etc/ringout/root.crt; chmod 644 /etc/ringout/root.crt
echo "== TLS to the server"
printf '%s\n' "listen_addresses = '*'" "ssl = on" "ssl_cert_file = 'server.crt'" "ssl_key_file = 'server.key'" >> /etc/postgresql/15/main/postgresql.conf
printf '%s\n' 'local all postgres peer' 'hostssl all all samenet scram-sha-256' > /etc/postgresql/15/main/pg_hba.conf
chown postgres /etc/postgresql/15/main/pg_hba.conf
run pg_ctlcluster 15 main start
echo "== owner, bench, database"
su postgres -c psql <<'X'
create role ringout_owner login password 'owner pw';
create role bench login password 'bench:pw';
create role bench2 login password 'bench2';
create role bench3 login password 'bench3';
create database ringout owner ringout_owner;
X
export PATH=/opt/ringout:$PATH
printf 'server:5432:*:ringout_owner:owner pw\nserver:5432:*:bench:bench\\:pw\nserver:5432:*:bench2:bench2\nserver:5432:*:bench3:bench3\n' > ~/.pgpass; chmod 600 ~/.pgpass
for r in bench bench2 bench3; do PGUSER=ringout_owner run ringout store migrate --role $r --store "postgresql://server/ringout?sslmode=verify-full&sslrootcert=/etc/ringout/root.crt"; done
echo "== at each bench"
export RINGOUT_STORE="postgresql://server/ringout?sslmode=verify-full&sslrootcert=/etc/ringout/root.crt"
export PGUSER=bench
cd $W; mkdir work; cd work
cp -r /opt/ringout/harness-samples/swing-bridge/* . ; mkdir sheets; cp point-to-point.xlsx point-to-point-clean.xlsx sheets/
printf 'Name,Value\nprocedure,QP-12\ninstrument,Meter 7\ncalibration due,2027-03-01\n' > bench-1.csv
run ringout store station "bench 1" bench-1.csv
run ringout plan junction-box.xlsx --job "station:bench 1" -o sheet.xlsx | tail -3
run ringout store add junction-box.xlsx sheets/
run ringout units
run ringout check unit:0418 | head -5
run ringout lot unit:0418 | head -5
echo "== people"
echo "four lamps on a bridge" > passphrase.txt
run ringout people add "Maren Lindqvist" --role administrator --passphrase passphrase.txt --who "Maren Lindqvist"
run ringout people add "Rotimi Adeyemi" --role tester --passphrase passphrase.txt --who "Maren Lindqvist"
run ringout people add "Katarina Novak" --role inspector --passphrase passphrase.txt --who "Maren Lindqvist"
printf 'server:5432:ringout:bench:bench\\:pw\nserver:5432:ringout:bench2:bench2\nserver:5432:ringout:bench3:bench3\n' > /etc/ringout/pgpass; chown ringout /etc/ringout/pgpass; chmod 600 /etc/ringout/pgpass
awk '/```ini/{f=1;next}/```/{f=0}f' /opt/ringout/docs/how-to/run-a-shop.md > /etc/systemd/system/ringout-bench.service
run systemd-analyze verify /etc/systemd/system/ringout-bench.service
run systemd-analyze security --offline=true /etc/systemd/system/ringout-bench.service | tail -2
# as the unit runs it, by hand: nothing but its Environment=
startbench() { # n
  local st
  local env=(); while read -r l; do env+=("${l#Environment=}"); done < <(grep ^Environment= /etc/systemd/system/ringout-bench.service)
  setpriv --reuid=ringout --regid=ringout --init-groups env -i HOME=/var/lib/ringout PATH=/usr/bin:/bin "${env[@]}" PGUSER=$2 XDG_DATA_HOME=/var/lib/ringout/$3 /opt/ringout/ringout bench --listen bench$1.shop --station "bench $1" --no-browser < /dev/null > $W/bench$1.log 2>&1 &
}
startbench 1 bench .local/share; startbench 2 bench2 b2; startbench 3 bench3 b3
for i in $(seq 90); do grep -q "^Valid until" $W/bench3.log && grep -q "^Valid until" $W/bench1.log && grep -q "^Valid until" $W/bench2.log && break; sleep 1; done
head -20 $W/bench?.log
ls -lR /var/lib/ringout/.local/share/ringout | head -20
echo "== a tablet"
openssl s_client -connect bench1.shop:8443 </dev/null 2>/dev/null | openssl x509 -noout -fingerprint -sha256 -ext subjectAltName -dates
cat > tab.py <<'X'
import requests,warnings; warnings.simplefilter('ignore')
b='https://bench1.shop:8443'
s=requests.Session(); s.verify=False; s.trust_env=False
print(s.get(b+'/').status_code, s.post(b+'/api/sign-in',json={'name':'Rotimi Adeyemi','passphrase':'four lamps on a bridge'},headers={'Origin':b}).text)
print(s.get(b+'/api/units').text[:300])
X
python3 tab.py
echo "== who leaves"
run ringout people withdraw "Rotimi Adeyemi" --why "left the shop" --who "Maren Lindqvist"
run ringout people passphrase "Katarina Novak" --who "Katarina Novak" </dev/null
echo "== certificates renewed (by hand what systemctl does)"
pkill -TERM -u ringout -f 'bench1.shop' ; sleep 2
rm -r /var/lib/ringout/.local/share/ringout/tls; echo "rm -> $?"
startbench 1 bench .local/share; for i in $(seq 90); do grep -q "^Valid until" $W/bench1.log && break; sleep 1; done; grep -n "ingerprint\|Valid" $W/bench1.log
openssl s_client -connect bench1.shop:8443 </dev/null 2>/dev/null | openssl x509 -noout -fingerprint -sha256
echo "== the server's certificate renewed: benches go on"
setpriv --reuid=postgres --regid=postgres --init-groups bash -c "cd $D; openssl req -new -nodes -subj /CN=server -addext subjectAltName=DNS:server -keyout server.key -out server.csr 2>/dev/null; openssl x509 -req -in server.csr -days 397 -copy_extensions copy -CA root.crt -CAkey root.key -CAcreateserial -out server.crt 2>/dev/null; chmod 600 server.key"
env -u PGUSER su postgres -c "psql -tc 'select pg_reload_conf()'"
run ringout store check
echo "== keys"
run ringout people keys -o keys.txt
cat keys.txt
echo "== backup, restore"
run ringout store backup $W/backup/ringout-2026-11-30.db
run ringout store check | grep Digest
run ringout check unit:0418 --store $W/backup/ringout-2026-11-30.db | head -2
env -u PGUSER su postgres -c "psql -c 'create database again owner ringout_owner'"
S="?sslmode=verify-full&sslrootcert=/etc/ringout/root.crt"
PGUSER=ringout_owner run ringout store migrate --role bench --store "postgresql://server/again$S"
PGUSER=ringout_owner run ringout store copy $W/backup/ringout-2026-11-30.db "postgresql://server/again$S"
run ringout store check --store "postgresql://server/again$S" | grep Digest
echo "== archive"
run ringout report --new-key inspector.key --passphrase passphrase.txt
run ringout report unit:0418 -o 0418.pdf --seal inspector.key --passphrase passphrase.txt | tail -3
run ringout report --verify 0418.pdf --key inspector.key.pub | tail -6
run ringout report --verify 0418.pdf --key inspector.key.pub --store $W/backup/ringout-2026-11-30.db | tail -6
printf 'P17\tR. Adeyemi\nP18\tRotimi Adeyemi\nP3\tMaren Lindqvist\nP4\tM. Lindqvist\nP17\tRA\n' > ids.txt
run ringout report unit:0418 -o 0418-ids.pdf --ids ids.txt | tail -3
pdftotext 0418-ids.pdf - 2>/dev/null | grep -c "Adeyemi"
echo "== a bench without network"
run ringout store backup away.db
(ringout bench --store away.db --station "bench 3" --no-browser </dev/null > away.log 2>&1 & echo $! > away.pid); sleep 6; cat away.log | head -5; kill $(cat away.pid); 
run ringout store copy away.db "$RINGOUT_STORE"
run ringout store copy away.db "$RINGOUT_STORE"
pkill -u ringout; pg_ctlcluster 15 main stop -m fast
