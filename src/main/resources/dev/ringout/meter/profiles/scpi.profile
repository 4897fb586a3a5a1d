meter profile: ringout 1
# SCPI-99, IEEE 488.2. The settings that every meter of ohms has.
about: a meter of ohms that takes commands, range chosen by itself
speaks: scpi
two-wire: CONF:RES
four-wire: CONF:FRES
setting: FUNC?
setting: RES:RANG:AUTO?
query: READ?
errors: SYST:ERR?
fence: number
settle-ms: 200
noise-ohms: 0.002
noise-share: 0.0005
