#!/bin/bash
# The pictures of the bench's screens that the documents show, taken anew. From the project's root after
# `mvn test-compile`, with chromium and chromium-driver:
#   src/bench/pictures.sh [FOLDER [FOLDER OF THE LEAD HAND'S SCREENS]]
set -eu
cp=${CP:-target/classes:target/test-classes:target/lib/*}
java -cp "$cp" dev.ringout.page.ScreenPictures "${1:-docs/tutorial/pictures}"
java -cp "$cp" dev.ringout.page.ShopPictures "${2:-docs/pictures}" light shop lot
