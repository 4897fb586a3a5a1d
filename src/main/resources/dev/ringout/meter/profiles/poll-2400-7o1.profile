meter profile: ringout 1
about: a meter that sends a line when it is sent a D
speaks: lines
sends: poll
poll: D
ending: cr
line: 2400 7o1
dtr: 1
rts: 0
answer-ms: 1500
settle-ms: 800
noise-share: 0.001
