#!/bin/bash
# What may happen to a store at one bench: a full disk, a medium that may only be read, a temporary folder from which nothing
# runs, several programs at one file. Mounts small file systems in memory, so it is run as root, from the project's root:
#   RINGOUT=target/ringout src/bench/store-accidents.sh
set -u
ringout=${RINGOUT:-target/ringout}
sample=harness-samples/swing-bridge
folder=$(mktemp -d)
trap 'umount "$folder/small" "$folder/noexec" 2>/dev/null; rm -rf "$folder"' EXIT
mkdir "$folder/small" "$folder/noexec" "$folder/sheets"
bad=0
expect() { # expect CODE TEXT COMMAND…
  local code=$1 text=$2 said rc
  shift 2
  said=$("$@" 2>&1); rc=$?
  said=$(echo "$said" | grep -v SLF4J)
  if [ "$rc" = "$code" ] && grep -qF "$text" <<< "$said"; then echo "ok   $rc  $(grep -F -m1 "$text" <<< "$said" | cut -c1-150)"; else echo "BAD  $rc, wanted $code and \"$text\": $said"; bad=1; fi
}
for i in $(seq 1 40); do
  cp -r $sample/point-to-point-clean "$folder/sheets/$i"
  sed -i "s/0417/9$i/" "$folder/sheets/$i/job.csv"
done

echo "== a disk that is full"
mount -t tmpfs -o size=900k tmpfs "$folder/small"
store="$folder/small/bench.db"
expect 0 "1 sheet added" $ringout store add $sample/junction-box.xlsx "$folder/sheets/1" --store "$store"
expect 73 "" $ringout store add $sample/junction-box.xlsx "$folder"/sheets/* --store "$store"
mount -o remount,size=20m "$folder/small"
expect 0 "WHOLE" $ringout store check --store "$store"
expect 0 "conforms" $ringout units --store "$store"
expect 0 "there already" $ringout store add $sample/junction-box.xlsx "$folder"/sheets/* --store "$store"
expect 0 "40 units" $ringout store check --store "$store"

echo "== a medium that may only be read"
mount -o remount,ro "$folder/small"
expect 0 "40 units in" $ringout units --store "$store"
expect 0 "CONFORMS" $ringout check unit:91 --store "$store"
expect 73 "nothing can be added" $ringout store add $sample/junction-box.xlsx $sample/point-to-point --store "$store"
mount -o remount,rw "$folder/small"

echo "== a temporary folder from which nothing runs"
mount -t tmpfs -o noexec,size=20m tmpfs "$folder/noexec"
expect 65 "org.sqlite.tmpdir" env JAVA_TOOL_OPTIONS="-Djava.io.tmpdir=$folder/noexec" $ringout units --store "$store"
expect 0 "40 units in" env JAVA_TOOL_OPTIONS="-Djava.io.tmpdir=$folder/noexec -Dorg.sqlite.tmpdir=$folder" $ringout units --store "$store"

echo "== six programs at one file"
pids=()
for i in 1 2 3 4 5 6; do
  $ringout store add $sample/junction-box.xlsx "$folder/sheets/$i" "$folder/sheets/$((i + 6))" "$folder/sheets/$((i + 7))" --store "$folder/shared.db" > "$folder/out$i" 2>&1 &
  pids+=($!)
done
for pid in "${pids[@]}"; do wait "$pid" || { echo "BAD  a writer failed: $?"; cat "$folder"/out*; bad=1; }; done
expect 0 "13 units" $ringout store check --store "$folder/shared.db"
exit $bad
