#!/bin/bash
# The pictures of the bench's screens that the documents show, taken anew. From the project's root after
# `mvn test-compile`, with chromium and chromium-driver:
#   src/bench/pictures.sh [FOLDER]
set -eu
cp=${CP:-target/classes:target/test-classes:target/lib/*}
exec java -cp "$cp" dev.ringout.page.ScreenPictures "${1:-docs/tutorial/pictures}"
