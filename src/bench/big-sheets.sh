#!/bin/sh
# Processor time of a check of units with 2,000 wires and four faults, read by the steps of their own plan: a row for each,
# and the median, the 90th of a hundred and the most. Run from the project's root after `mvn package`:
#   src/bench/big-sheets.sh [SEED] [UNITS]
set -eu
[ $# -gt 0 ] || set -- 61 40
classes=target/test-classes:target/classes:$(ls target/lib/*.jar | grep -v ringout.jar | tr '\n' ':')
exec java -XX:+UseSerialGC -cp "$classes" dev.ringout.benchmarks.faults.BigSheetBench "$@"
