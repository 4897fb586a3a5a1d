#!/bin/bash
# What an open meter takes of a core while somebody listens to it: a profile key-… is idle, stream-… and scpi are not.
#   CP=class:path src/bench/idle-meter.sh ADDRESS PROFILE SECONDS
set -eu
exec java -cp "${CP:-target/classes:target/test-classes:target/lib/*}" dev.ringout.benchmarks.IdleMeter "$@"
