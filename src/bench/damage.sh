#!/bin/sh
# Damages lists, sheets, seals and records as several programs write them, the file of a store, what meters say and what
# is sent to the bench's page, and runs every command on them: no exit 70, no run of more than ten seconds, nothing beyond
# 512 MiB, no difference between formats, nothing verified that was not sealed. Needs LibreOffice and Python with openpyxl, xlwt and odfpy. Run from the project's root after `mvn package`:
#   src/bench/damage.sh [SECONDS] [SEED] [FOLDER]
set -eu
seconds=${1:-600}
seed=${2:-1}
folder=${3:-target/damage}
[ -d "$folder/seeds" ] || /usr/bin/python3 src/bench/writers.py "$folder/seeds"
# The tests' writer of .ods is no part of the program.
ods=$(ls "$HOME"/.m2/repository/com/github/miachm/sods/SODS/*/SODS-*.jar | tail -n 1)
classes=target/test-classes:target/classes:$(ls target/lib/*.jar | grep -v ringout.jar | tr '\n' ':')$ods
exec java -Xmx512m -XX:+UseSerialGC -cp "$classes" dev.ringout.benchmarks.damage.DamageBench "$folder/seeds" "$folder/finds" "$seconds" "$seed"
