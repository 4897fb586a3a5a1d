#!/bin/bash
# Kills writers of a store at random moments, cuts the power of a bench by replaying the traced writes of SQLite up to a random
# moment, kills the whole server, and lets twenty writers work on one server while they are killed. Counts what was acknowledged
# and is lost, and what is there twice. Needs strace, and PostgreSQL's own programs. Run from the project's root:
#   CP=class:path src/bench/store-crash.sh [KILLS] [CUTS] [WRITERS]
set -eu
exec python3 src/bench/store_crash.py "${CP:-target/classes:target/test-classes:target/lib/*}" "${1:-200}" "${2:-80}" "${3:-20}"
