#!/bin/sh
# Changes the code in small ways and sees whether the tests notice (PIT, Apache-2.0; fetched by Maven when asked for).
# From two minutes for `seal` to an hour for `diagnose`; the slowest tests are left out. Reports go to target/mutation.
#   src/bench/mutation.sh [PACKAGE]...
# MUTANTS_OF_EACH_CLASS=8 takes so many of each class at most: a sample. On a machine that has other things to do a
# mutant soon counts as one that never ends: give it more with PATIENCE=15000 (ms), and read KILLED and TIMED_OUT apart.
set -eu
sample=
[ -z "${MUTANTS_OF_EACH_CLASS:-}" ] || sample="-Dfeatures=+CLASSLIMIT(limit[$MUTANTS_OF_EACH_CLASS])"
for package in "${@:-revision}"; do
  classes="dev.ringout.$package.*"
  case $package in
    revision) tests='dev.ringout.revision.*,dev.ringout.cli.DiffCommandTest,dev.ringout.cli.WorkCommandTest' ;;
    plan) tests='dev.ringout.plan.*,dev.ringout.cli.PlanCommandTest' ;;
    circuit) tests='dev.ringout.circuit.*,dev.ringout.reference.Net*,dev.ringout.trade.*,dev.ringout.cli.TraceCommandTest,dev.ringout.compare.*' ;;
    compare) tests='dev.ringout.compare.*,dev.ringout.trade.*,dev.ringout.cli.CheckCommandTest' ;;
    harness) tests='dev.ringout.harness.*,dev.ringout.intake.*' ;;
    seal) tests='dev.ringout.seal.*,dev.ringout.words.SealSentencesTest' ;;
    search)
      classes='dev.ringout.diagnose.wiring.Search,dev.ringout.diagnose.wiring.Search$*'
      tests='dev.ringout.diagnose.*,dev.ringout.trade.*' ;;
    values) classes='dev.ringout.diagnose.values.*' tests='dev.ringout.diagnose.ToldTest,dev.ringout.trade.*' ;;
    diagnose) tests='dev.ringout.diagnose.*,dev.ringout.trade.*,dev.ringout.benchmarks.faults.EveryKindTest,dev.ringout.sample.SwingBridgeTest' ;;
    *) echo "no tests are named for $package" >&2; exit 64 ;;
  esac
  mvn -B -q -Pmutation test-compile org.pitest:pitest-maven:1.30.2:mutationCoverage -DtargetClasses="$classes" \
    -DtargetTests="$tests" -Dthreads=1 -DreportsDirectory="target/mutation/$package" \
    -DtimeoutConstant="${PATIENCE:-2000}" $sample
  cut -d, -f6 "target/mutation/$package/mutations.csv" | sort | uniq -c
done
