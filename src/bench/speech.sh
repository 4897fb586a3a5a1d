#!/bin/bash
# Makes the spoken words of the bench's page, for machines that have no voice of their own: one sound file and where in it each word is.
# Needs espeak-ng and ffmpeg (Debian's packages of these names). Run from the project's root; writes into src/main/resources/dev/ringout/page.
#
# Letters are said in the British way: "zed" can't be taken for "C". "A" is written in sounds, for alone it would be read as the article.
set -euo pipefail

page=src/main/resources/dev/ringout/page
rate=22050
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

letters=(a b c d e f g h i j k l m n o p q r s t u v w x y z)
words=(zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen
  twenty thirty forty fifty sixty seventy eighty ninety
  small large pin to and the rest shell once more not good sure done)

written() { # what the synthesiser is given for a word
  case $1 in
    a) echo '[[eI]]' ;;
    ?) echo "${1^^}." ;;
    *) echo "$1" ;;
  esac
}

seconds() { awk -v bytes="$1" -v rate="$rate" 'BEGIN { printf "%.3f", bytes / 2 / rate }'; }

quiet='silenceremove=start_periods=1:start_threshold=-46dB'
: > "$work/all.raw"
index=
for word in "${letters[@]}" "${words[@]}"; do
  espeak-ng -v en-gb -s 150 -g 0 -w "$work/word.wav" "$(written "$word")"
  ffmpeg -loglevel error -y -i "$work/word.wav" -af "$quiet,areverse,$quiet,areverse,apad=pad_dur=0.05" -ar "$rate" -ac 1 -f s16le "$work/word.raw"
  index+="${index:+,$'\n'}  \"$word\": [$(seconds "$(stat -c %s "$work/all.raw")"), $(seconds "$(stat -c %s "$work/word.raw")")]"
  cat "$work/word.raw" >> "$work/all.raw"
done

printf '{\n%s\n}\n' "$index" > "$page/speech.json"
ffmpeg -loglevel error -y -f s16le -ar "$rate" -ac 1 -i "$work/all.raw" -c:a libopus -b:a 24k -application voip -map_metadata -1 -bitexact "$page/speech.ogg"
wc -c "$page/speech.ogg" "$page/speech.json"
