meter profile: ringout 1
# Fewer power line cycles: quicker, with more noise.
about: the same with short measurements
speaks: scpi
two-wire: CONF:RES
four-wire: CONF:FRES
set-up: RES:NPLC 1
setting: FUNC?
setting: RES:RANG:AUTO?
query: READ?
errors: SYST:ERR?
fence: number
settle-ms: 60
noise-ohms: 0.01
noise-share: 0.002
