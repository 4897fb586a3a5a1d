meter profile: ringout 1
# An optical link is fed by DTR and RTS (common practice, no source).
about: a meter that sends lines all the time
speaks: lines
sends: stream
line: 19200 7o1
dtr: 1
rts: 0
answer-ms: 2000
settle-ms: 800
noise-share: 0.001
