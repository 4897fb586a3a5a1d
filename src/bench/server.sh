#!/bin/bash
# How long the bench's server takes: to its first answer, for a POST and back, from an event to a page; what it takes of a core when idle.
#   CP=class:path src/bench/server.sh POSTS PAGES
set -eu
exec java -cp "${CP:-target/classes:target/test-classes:target/lib/*}" dev.ringout.benchmarks.ServerDelays "$@"
