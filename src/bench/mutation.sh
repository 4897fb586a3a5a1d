#!/bin/sh
# Changes the code in small ways and sees whether the tests notice (PIT, Apache-2.0; fetched by Maven when asked for).
# From ten minutes for `plan` to an hour for `diagnose`; the slowest tests are left out. Reports go to target/mutation.
#   src/bench/mutation.sh [PACKAGE]...
set -eu
for package in "${@:-revision}"; do
  case $package in
    revision) tests='dev.ringout.revision.*,dev.ringout.cli.DiffCommandTest,dev.ringout.cli.WorkCommandTest' ;;
    plan) tests='dev.ringout.plan.*,dev.ringout.cli.PlanCommandTest' ;;
    circuit) tests='dev.ringout.circuit.*,dev.ringout.reference.Net*,dev.ringout.trade.*,dev.ringout.cli.TraceCommandTest,dev.ringout.compare.*' ;;
    compare) tests='dev.ringout.compare.*,dev.ringout.trade.*,dev.ringout.cli.CheckCommandTest' ;;
    diagnose) tests='dev.ringout.diagnose.*,dev.ringout.trade.*,dev.ringout.bench.faults.EveryKindTest,dev.ringout.sample.SwingBridgeTest' ;;
    *) echo "no tests are named for $package" >&2; exit 64 ;;
  esac
  mvn -B -q -Pmutation test-compile org.pitest:pitest-maven:1.30.2:mutationCoverage -DtargetClasses="dev.ringout.$package.*" \
    -DtargetTests="$tests" -Dthreads=1 -DreportsDirectory="target/mutation/$package"
  cut -d, -f6 "target/mutation/$package/mutations.csv" | sort | uniq -c
done
