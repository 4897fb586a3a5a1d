#!/bin/bash
# Reads pair after pair of a practice meter through lines that delay, cut, merge, split, repeat and clip packets.
#   CP=class:path src/bench/unruly-lines.sh PAIRS SEED
set -eu
exec java -cp "${CP:-target/classes:target/test-classes:target/lib/*}" dev.ringout.benchmarks.UnrulyLines "$@"
