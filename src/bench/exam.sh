#!/bin/sh
# The exam of the diagnosis: units, wires, meter and habits of its own, which share no class with the program. Prints its
# table, and the odds that are stated against how often it is so. Run from the project's root after `mvn package`:
#   src/bench/exam.sh [FIRST SEED] [UNITS] [QUESTION …] [tell] [once] [open|closed] [PICTURE.svg]
# `tell` tells each unit that is not exact, or wrongly certain, with the folder of its files. Seeds that leave 2 when divided
# by 3 are never told: they are the closed part. `once` makes none of the readings that are asked for next.
set -eu
[ $# -gt 0 ] || set -- 1 20
classes=target/test-classes:target/classes:$(ls target/lib/*.jar | grep -v ringout.jar | tr '\n' ':')
exec java -XX:+UseSerialGC -cp "$classes" dev.ringout.benchmarks.exam.ExamBench "$@"
