#!/bin/sh
# Time and peak memory of a check and an import of a generated unit, beside the bare event reader on the
# same files and beside Java's own start. Run from the project's root after `mvn package`:
#   src/bench/big-unit.sh [WIRES] [FOLDER] [READINGS]
set -eu
wires=${1:-100000}
folder=${2:-target/bench}
readings=${3:-0}
classes=target/test-classes:target/classes:$(ls target/lib/*.jar | grep -v ringout.jar | tr '\n' ':')
[ -f "$folder/readings.xlsx" ] || java -Xmx2g -cp "$classes" dev.ringout.benchmarks.BigUnit "$folder" "$wires" "$readings" xlsx
ls -l "$folder"/*.xlsx

measure() {
  label=$1
  shift
  python3 - "$label" "$@" <<'P'
import resource, subprocess, sys, time
start = time.time()
code = subprocess.run(sys.argv[2:], stdout=subprocess.DEVNULL).returncode
peak = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
print(f"{sys.argv[1]:44} {time.time() - start:7.2f} s {peak:7.0f} MiB  exit {code}")
P
}

for heap in 512m 2g; do
  measure "check, heap $heap" env RINGOUT_JAVA_OPTS="-Xmx$heap" target/ringout check "$folder/harness.xlsx" "$folder/readings.xlsx"
done
measure "bare event reader, cells counted" java -Xmx512m -XX:+UseSerialGC -cp "$classes" dev.ringout.benchmarks.BareReader count "$folder/harness.xlsx" "$folder/readings.xlsx"
measure "review of the unit, heap 512m" env RINGOUT_JAVA_OPTS=-Xmx512m target/ringout review "$folder/harness.xlsx"
measure "the unit read and no more" java -Xmx512m -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "$classes" dev.ringout.benchmarks.ReadOnly "$folder/harness.xlsx"
measure "diff with the next revision, heap 1g" env RINGOUT_JAVA_OPTS=-Xmx1g target/ringout diff "$folder/harness.xlsx" "$folder/harness-next.xlsx"
measure "import of the wire list, heap 512m" env RINGOUT_JAVA_OPTS=-Xmx512m target/ringout import "$folder/harness.xlsx"
measure "the same, written as a workbook" env RINGOUT_JAVA_OPTS=-Xmx512m target/ringout import "$folder/harness.xlsx" --force -o "$folder/imported.xlsx"
measure "bare event reader, cells counted" java -Xmx512m -XX:+UseSerialGC -cp "$classes" dev.ringout.benchmarks.BareReader count "$folder/harness.xlsx"
measure "bare event reader, texts handed over" java -Xmx512m -XX:+UseSerialGC -cp "$classes" dev.ringout.benchmarks.BareReader texts "$folder/harness.xlsx"
measure "ringout --version" target/ringout --version
measure "java -version" java -version
measure "check of the sample" target/ringout check harness-samples/swing-bridge/junction-box.xlsx harness-samples/swing-bridge/point-to-point.xlsx
java -cp "$classes" dev.ringout.benchmarks.ResistanceTimes
