#!/bin/bash
# A hostile stranger, a curious colleague and a tester who wants his own unit to pass, at a bench of a shop that is started for them:
# other sites, cookies, tries at once, every address by every role, odd paths and files, TLS, names, keys, what a bench hands over that
# was away. Says what does not hold, and how long a sign-in takes of a name that is one and of one that is none. Takes some ten minutes.
#   RINGOUT=target/ringout src/bench/stranger.sh
set -eu
export RINGOUT=$(realpath "${RINGOUT:-target/ringout}") FOLDER=$(mktemp -d) PORT=${PORT:-9443}
here=$(cd "$(dirname "$0")/stranger" && pwd)
trap 'kill $bench 2>/dev/null || true; rm -rf "$FOLDER"' EXIT
cd "$FOLDER"
store="--store $FOLDER/units.db"
echo "four lamps on a bridge" > passphrase
$RINGOUT store migrate $store
for one in "Maren Lindqvist:administrator" "Rotimi Adeyemi:tester" "Sofia Brandt:tester" "Katarina Novak:inspector" "Tomas Eriksen:engineer" "Ines Moreau:lead" "Bela Varga:tester,inspector" "Otto Withdrawn:tester"; do
  $RINGOUT people add "${one%%:*}" --role "${one##*:}" --passphrase passphrase --who "Maren Lindqvist" $store
done
$RINGOUT people withdraw "Otto Withdrawn" --why left --who "Maren Lindqvist" $store
mkdir lamps
printf 'Wire,From,To,Gauge,Length (m)\nW1,J1-1,P1-1,20,2\nW2,J1-2,P1-2,20,2\nW3,J1-3,P1-3,20,2\n' > lamps/wires.csv
printf 'Name,Value\ntitle,Lamps\nrevision,A\n' > lamps/header.csv
printf 'Name,Value,Unit\ninsulation test,none,\n' > lamps/limits.csv
XDG_DATA_HOME="$FOLDER/data" $RINGOUT bench lamps --listen "localhost:$PORT" --station "Bench 1" --no-browser $store < /dev/null > bench.log 2>&1 &
bench=$!
for i in $(seq 60); do grep -q "^Valid until" bench.log && break; sleep 1; done
code=0
for part in ${PARTS:-insider addresses away signin timing}; do
  echo; echo "== $part"
  (cd "$here" && PYTHONDONTWRITEBYTECODE=1 python3 $part.py) || code=1
done
if grep -q "a defect in ringout" bench.log; then cat bench.log; code=1; fi
exit $code
