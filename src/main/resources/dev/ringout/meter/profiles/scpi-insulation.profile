meter profile: ringout 1
# The second field of an answer gives the volts. They are switched on at the tester, by hand.
about: an insulation tester that takes queries: ohms and volts
speaks: scpi
two-wire:
query: FETC?
errors: SYST:ERR?
fence: number
second-field: volts
answer-ms: 5000
settle-ms: 1000
noise-share: 0.05
