meter profile: ringout 1
# The volts are switched on at the tester, by hand.
about: an insulation tester that sends ohms and volts in a line
speaks: lines
sends: stream
line: 9600 8n1
dtr: 1
rts: 0
answer-ms: 5000
settle-ms: 1000
noise-share: 0.05
with: volts
