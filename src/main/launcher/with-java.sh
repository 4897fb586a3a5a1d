#!/bin/sh
# Makes of the zip a second one that brings its own Java, for a bench PC on which nothing is installed:
#
#   src/main/launcher/with-java.sh                           # for the system on which it runs
#   src/main/launcher/with-java.sh windows-x64 PATH/jmods    # for another one, with the jmods of a JDK for that system
#
# Run `mvn package` first. The jlink that is found must be of the same version as the jmods.
set -eu
export LC_ALL=C TZ=UTC

top=$(cd "$(dirname "$0")/../../.." && pwd -P)
system=${1:-linux-x64}
java=${JAVA_HOME:+$JAVA_HOME/bin/}
jmods=${2:-}

# What the program and its libraries ask of Java: documents and pictures, the store, the bench's server, files in zips,
# letters of old spreadsheets, keys, and what PostgreSQL's driver wants to sign in.
modules=java.base,java.desktop,java.logging,java.management,java.naming,java.security.jgss,java.security.sasl,java.sql,java.xml
modules=$modules,jdk.charsets,jdk.crypto.ec,jdk.httpserver,jdk.unsupported,jdk.xml.dom,jdk.zipfs

zip=$(ls "$top"/target/ringout-*.zip | grep -E '/ringout-[0-9.]+\.zip$' | head -n 1)
name=$(basename "$zip" .zip)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
(cd "$work" && unzip -q "$zip")

case $("${java}jlink" --version) in
  17* | 18* | 19* | 20*) compress=2 ;;
  *) compress=zip-6 ;;
esac
"${java}jlink" ${jmods:+--module-path "$jmods"} --add-modules "$modules" --strip-debug --no-header-files --no-man-pages \
  --compress=$compress --output "$work/$name/java"

# Always the same bytes from the same Java: in one order, with the time that the first zip has.
moment=$(unzip -lqq "$zip" | awk 'NR == 1 { print $2 " " $3 }')
find "$work/$name" -exec touch -h -d "$moment" {} +
mkdir -p "$top/target/with-java"
result=$top/target/with-java/$name-$system.zip
rm -f "$result"
(cd "$work" && find "$name" -print | sort | zip -q -X -y -9 "$result" -@)
ls -l "$result"
