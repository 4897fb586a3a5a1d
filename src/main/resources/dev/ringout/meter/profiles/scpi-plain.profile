meter profile: ringout 1
# For meters without the common commands *ESE and *ESE?.
about: a meter that takes few commands; the error queue tells answers apart
speaks: scpi
two-wire: CONF:RES
query: READ?
errors: SYST:ERR?
fence: errors
settle-ms: 300
noise-ohms: 0.01
noise-share: 0.001
