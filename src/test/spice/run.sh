#!/bin/sh
# Runs the general circuit simulator over every netlist of src/test/resources/spice and prints "netlist,ohms".
# From the project's root: src/test/spice/run.sh > src/test/resources/spice/results.csv
set -eu
command -v ngspice >/dev/null || { echo "the simulator is not installed" >&2; exit 3; }
echo "netlist,ohms"
for netlist in src/test/resources/spice/*.cir; do
  ohms=$(ngspice -b "$netlist" 2>/dev/null | sed -n 's/^v([^)]*) = \(.*\)$/\1/p')
  [ -n "$ohms" ] || { echo "no result for $netlist" >&2; exit 1; }
  echo "$(basename "$netlist" .cir),$ohms"
done
