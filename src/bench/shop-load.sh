#!/bin/bash
# A shop at work on this machine: STATIONS that serve their page from PROCESSES, hands that type 20 values a minute at each over
# HTTP, one PostgreSQL. A process is killed every 10 s, a line to the server is cut in between, the server is killed twice; with
# calm for the fourth word nothing is. Prints delays, what was refused, and whether anything was lost or kept twice.
#   CP=class:path src/bench/shop-load.sh SECONDS STATIONS PROCESSES accidents|calm SEED
set -eu
exec java -Xmx400m -XX:+UseSerialGC -cp "${CP:-target/classes:target/test-classes:target/lib/*}" dev.ringout.benchmarks.ShopLoad "${1:-240}" "${2:-100}" "${3:-10}" "${4:-accidents}" "${5:-1}"
