meter profile: ringout 1
about: a meter that sends a line when its key is pressed
speaks: lines
sends: key
line: 9600 8n1
dtr: 1
rts: 0
answer-ms: 60000
settle-ms: 800
noise-share: 0.001
