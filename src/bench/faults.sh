#!/bin/sh
# Plants faults of every kind in random units, reads them by three habits, and prints how the diagnoses fare: the
# table of docs/explanation/diagnosis.md. Run from the project's root after `mvn package`:
#   src/bench/faults.sh [SEED] [UNITS] [ALL|ONE|MANY|BIG|a kind] [FULL_MATRIX|SHEET_AND_SWEEPS|SHEET]
# With a third word each unit that is not exact, or not certain, is told on standard error.
set -eu
[ $# -gt 0 ] || set -- 1 20
classes=target/test-classes:target/classes:$(ls target/lib/*.jar | grep -v ringout.jar | tr '\n' ':')
exec java -XX:+UseSerialGC -cp "$classes" dev.ringout.benchmarks.faults.FaultBench "$@"
