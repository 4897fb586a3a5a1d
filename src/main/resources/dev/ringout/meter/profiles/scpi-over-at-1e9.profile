meter profile: ringout 1
# Seen on one family: over range is said as 1E9.
about: a meter that says 1E9 where it means over range
speaks: scpi
two-wire: CONF:RES
four-wire: CONF:FRES
setting: FUNC?
setting: RES:RANG:AUTO?
query: READ?
errors: SYST:ERR?
fence: number
over-floor: 1E9
settle-ms: 200
noise-ohms: 0.002
noise-share: 0.0005
