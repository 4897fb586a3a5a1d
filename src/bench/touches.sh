#!/bin/bash
# Simulated hands at simulated meters: what was taken wrongly, and how long it took.
#   CP=class:path src/bench/touches.sh 100000 SEED
set -eu
exec java -cp "${CP:-target/classes:target/test-classes:target/lib/*}" dev.ringout.benchmarks.Touches "$@"
