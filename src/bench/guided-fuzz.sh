#!/bin/sh
# Fuzzing guided by coverage: Jazzer (Apache-2.0), fetched by Maven when asked for and no part of the build.
# Run from the project's root after `mvn package`. What breaks is left in FOLDER as crash-* and timeout-*.
#   src/bench/guided-fuzz.sh cells|files [SECONDS] [FOLDER]
set -eu
what=${1:-cells}
seconds=${2:-600}
folder=${3:-target/guided-fuzz}
version=0.24.0
here=$(pwd)
mvn -B -q org.apache.maven.plugins:maven-dependency-plugin:3.9.0:get -Dartifact=com.code-intelligence:jazzer:$version
mvn -B -q org.apache.maven.plugins:maven-dependency-plugin:3.9.0:copy -Dartifact=com.code-intelligence:jazzer:$version -DoutputDirectory=target/jazzer
mvn -B -q org.apache.maven.plugins:maven-dependency-plugin:3.9.0:copy -Dartifact=com.code-intelligence:jazzer-api:$version -DoutputDirectory=target/jazzer
classes=$here/target/test-classes:$here/target/classes:$(ls "$here"/target/lib/*.jar | grep -v ringout.jar | tr '\n' ':')
seeds=$folder/$what
mkdir -p "$seeds"
sample=harness-samples/swing-bridge
if [ "$what" = cells ]; then
  target=dev.ringout.intake.ParserFuzz
  length=200
  number=0
  for text in 'J1-A' 'TB1-1+TB1-2' 'S1=AHEAD; W12=LIFTED' '>200 M
MΩ' '2k2' '300 mΩ' '0.75 mm²' '4/0' '12 ft 3 in' '1,5
kΩ' 'W12' 'REST' '1.2E9' 'OL'; do
    number=$((number + 1))
    printf '%s' "$text" >"$seeds/seed-$number"
  done
else
  target=dev.ringout.benchmarks.FileFuzz
  length=20000
  for list in "$sample"/as-received/*.csv; do (printf 0; cat "$list") >"$seeds/list-$(basename "$list")"; done
  (printf 1; cat $sample/junction-box/wires.csv) >"$seeds/wires"
  (printf 2; cat $sample/point-to-point/continuity.csv) >"$seeds/readings"
  number=3
  for part in worksheets/sheet2 sharedStrings styles workbook; do
    (printf $number; unzip -p $sample/junction-box.xlsx xl/$part.xml) >"$seeds/part-$number"
    number=$((number + 1))
  done
fi
exec java -Xmx512m -cp "$here/target/jazzer/jazzer-$version.jar:$here/target/jazzer/jazzer-api-$version.jar:$classes" \
  com.code_intelligence.jazzer.Jazzer --target_class=$target --instrumentation_includes='dev.ringout.**' \
  --disabled_hooks='com.code_intelligence.jazzer.sanitizers.**' --keep_going=20 --reproducer_path="$folder" \
  -timeout=10 -rss_limit_mb=2000 -max_len=$length -max_total_time="$seconds" -artifact_prefix="$folder/" "$seeds"
