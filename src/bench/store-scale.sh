#!/bin/bash
# Fills a store with units of 299 readings up to each size, and times what is asked of it. Run from the project's root:
#   CP=class:path src/bench/store-scale.sh STORE LOT SIZE…
#   CP=… src/bench/store-scale.sh /tmp/scale.db 1000 1000 3000 10000
# A server's user and password stand in PGUSER and PGPASSWORD; its database must be empty.
set -eu
exec java -Xmx2g -cp "${CP:-target/classes:target/test-classes:target/lib/*}" dev.ringout.benchmarks.StoreScale "$@"
